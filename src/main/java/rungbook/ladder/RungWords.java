package rungbook.ladder;

import java.util.List;
import java.util.stream.Collectors;

/** The rungs of a ladder in words. */
final class RungWords {

  private RungWords() {}

  static String of(Ladder ladder) {
    return "Ladder of " + ladder.title() + ". " + ladder.blocks().stream().flatMap(block -> block(block).stream())
        .collect(Collectors.joining(" "));
  }

  private static List<String> block(VoltageBlock block) {
    return block.rungs().stream().map(RungWords::of).toList();
  }

  /** {@code Rung 4, inducer motor: L1 at furnace, inducer relay, inducer motor, N at furnace.} */
  static String of(Rung rung) {
    return "Rung " + rung.number() + ", " + rung.name() + ": " + first(rung, 0) + ", "
        + rung.elements().stream().map(Element::name).collect(Collectors.joining(", ")) + ", "
        + first(rung, rung.nodes().size() - 1) + ".";
  }

  private static String first(Rung rung, int node) {
    return rung.nodes().get(node).names().get(0);
  }
}
