package rungbook.ladder;

import java.util.ArrayList;
import java.util.List;

/**
 * A rung broken into lines that fit a width.
 *
 * @param start what is under the dot where the first line begins; empty at a rail
 */
record RungLines(Rung rung, List<String> start, List<List<ElementCell>> lines) {

  /** Cells may be wider where there is room. */
  private static final double WIDE = 500;

  /** How far the last label of a line may reach beyond the line. */
  private static final double SIDE = 6;

  private static final double WIDEST = 111;
  private static final double WIDEST_WHERE_WIDE = 150;

  static RungLines of(Rung rung, double width) {
    double widest = width > WIDE ? WIDEST_WHERE_WIDE : WIDEST;
    List<String> start = start(rung, widest);
    var lines = new ArrayList<List<ElementCell>>();
    double used = Double.MAX_VALUE;
    double before = ElementCell.labelWidth(start);
    for (int i = 0; i < rung.elements().size(); i++) {
      Node next = rung.nodes().get(i + 1);
      boolean isNamed = next.kind() == Node.Kind.POINT || next.kind() == Node.Kind.GROUND;
      ElementCell cell = ElementCell.of(rung.elements().get(i), before, next, isNamed, widest);
      double over = Math.max(0, ElementCell.labelWidth(cell.node()) / 2 - SIDE);
      if (used + cell.width() + over > width) {
        lines.add(new ArrayList<>());
        used = 0;
      }
      lines.get(lines.size() - 1).add(cell);
      used += cell.width();
      before = ElementCell.labelWidth(cell.node()) / 2;
    }
    return new RungLines(rung, start, lines.stream().map(List::copyOf).toList());
  }

  private static List<String> start(Rung rung, double widest) {
    Node first = rung.nodes().get(0);
    return first.kind() == Node.Kind.LEFT_RAIL ? List.of() : ElementCell.label(first, widest);
  }

  static double width(List<ElementCell> line) {
    return line.stream().mapToDouble(ElementCell::width).sum();
  }

  static double above(List<ElementCell> line) {
    return line.stream().mapToDouble(ElementCell::above).max().orElse(0);
  }

  static int below(List<ElementCell> line) {
    return line.stream().mapToInt(cell -> cell.node().size()).max().orElse(0);
  }
}
