package rungbook.circuit;

import java.util.HashMap;
import java.util.Map;

/**
 * Which nodes hang together by something that carries current.
 *
 * <p>Between two islands nothing fixes the voltage: a lead on each reads nothing. The two windings
 * of a transformer are two islands unless something else ties them.
 */
final class Islands {

  private final Map<String, String> parent = new HashMap<>();

  static Islands of(Netlist netlist) {
    var islands = new Islands();
    islands.root(Netlist.GROUND);
    netlist.elements().forEach(islands::add);
    return islands;
  }

  private void add(Element element) {
    var ends = Netlist.ends(element);
    ends.forEach(this::root);
    if (!(element instanceof Element.Current)) {
      join(ends.get(0), ends.get(1));
    }
    if (element instanceof Element.Transformer) {
      join(ends.get(2), ends.get(3));
    }
  }

  private void join(String a, String b) {
    parent.put(root(a), root(b));
  }

  String root(String node) {
    String up = parent.computeIfAbsent(node, n -> n);
    if (up.equals(node)) {
      return node;
    }
    String top = root(up);
    parent.put(node, top);
    return top;
  }

  boolean connected(String a, String b) {
    return root(a).equals(root(b));
  }

  boolean floating(String node) {
    return !connected(node, Netlist.GROUND);
  }
}
