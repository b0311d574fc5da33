package rungbook.ladder;

import java.util.List;

/**
 * A way through a circuit from rail to rail, which passes the points that somebody measures at.
 *
 * @param rung the rung that it goes along there
 * @param nodes one more than there are elements; the last one is no rail where none can be reached
 */
public record RailPath(Rung rung, boolean isLine, List<Node> nodes, List<Element> elements) {

  public RailPath {
    nodes = List.copyOf(nodes);
    elements = List.copyOf(elements);
  }
}
