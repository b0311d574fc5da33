package rungbook.ladder;

import java.util.List;

/**
 * Elements in series between two nodes. An end that is no rail is a node of an earlier rung.
 *
 * @param number from 1, over the whole drawing
 * @param name what it is for: its loads
 * @param nodes one more than there are elements
 * @param from the rung that has the first node; 0 for a rail or ground
 * @param to the rung that has the last node; 0 for a rail, ground, or an end of no other part
 */
public record Rung(int number, String name, List<Node> nodes, List<Element> elements, int from, int to) {

  public Rung {
    nodes = List.copyOf(nodes);
    elements = List.copyOf(elements);
  }

  /** {@code Rung 4, inducer motor: L1 at furnace, inducer relay, inducer motor, N at furnace.} */
  public String words() {
    return RungWords.of(this);
  }
}
