package rungbook.ladder;

import rungbook.system.ControlSystem;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/** What a ladder calls the points of a system. */
final class PointNames {

  private final Vocabulary words;

  PointNames(ControlSystem system) {
    this.words = system.vocabulary();
  }

  /** With its place where the point has several. */
  String of(Terminal terminal) {
    Vocabulary.Point point = words.points().get(terminal.point());
    Vocabulary.Location place = words.locations().get(terminal.place());
    if (point == null) {
      return terminal.place().isEmpty() && !terminal.isGround() ? "inside " + terminal.point() : terminal.point();
    }
    return point.locations().size() < 2 || place == null ? point.name() : point.name() + " at " + place.name();
  }
}
