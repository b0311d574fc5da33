package rungbook.pack.page;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** The ways between the steps in few words, for the list of steps on paper: each answer with the number it leads to. */
final class StepMap {

  private final Tree tree;
  private final Outline outline;

  StepMap(Tree tree, Outline outline) {
    this.tree = tree;
    this.outline = outline;
  }

  /** @return empty for an end */
  String of(Outline.Place place) {
    return outline.isTake(place.step()) ? throughFragment(place) : answers(tree.steps().get(place.step()));
  }

  private String answers(Step step) {
    return step.ways().size() == 1 ? "→ " + number(step.ways().get(0))
        : step.ways().stream().map(way -> String.join(", ", WaysOn.answers(step, way)) + " → " + number(way))
            .collect(Collectors.joining("; "));
  }

  /** Where the steps of the fragment that is taken in lead out of it. */
  private String throughFragment(Outline.Place place) {
    List<Outline.Place> inside = outline.order().stream().filter(each -> isInside(each.number(), place)).toList();
    String out = inside.stream().flatMap(each -> tree.steps().get(each.step()).ways().stream()).map(this::number)
        .filter(number -> !isInside(number, place)).distinct().collect(Collectors.joining(", "));
    return out.isEmpty() ? "" : "→ " + out;
  }

  private static boolean isInside(String number, Outline.Place place) {
    return number.startsWith(place.number() + ".");
  }

  private String number(Way way) {
    return way.target() instanceof Target.ToStep to ? outline.place(to.step()).number() : way.label();
  }
}
