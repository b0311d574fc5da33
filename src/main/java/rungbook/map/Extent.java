package rungbook.map;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * Estimates the size of a layered layout before it is computed. A wire takes a slot in every layer that it crosses, so
 * long wires cost more than nodes: thousands of steps that all lead to the last one need millions of slots.
 */
final class Extent {

  private static final int MOST_NODES = 2_000;
  private static final int MOST_CROSSED = 100_000;

  private final Diagram diagram;
  private final List<List<Integer>> onward = new ArrayList<>();
  private final int[] waiting;
  private final int[] layer;
  private final boolean[] entered;

  private Extent(Diagram diagram) {
    this.diagram = diagram;
    this.waiting = new int[diagram.nodes().size()];
    this.layer = new int[diagram.nodes().size()];
    this.entered = new boolean[diagram.nodes().size()];
    diagram.nodes().forEach(node -> onward.add(new ArrayList<>()));
    diagram.wires().forEach(wire -> {
      onward.get(wire.from()).add(wire.to());
      waiting[wire.to()]++;
    });
  }

  static boolean isTooLarge(Diagram diagram) {
    return diagram.nodes().size() > MOST_NODES || new Extent(diagram).crossed() > MOST_CROSSED;
  }

  /** The total number of layers that the wires cross. */
  private long crossed() {
    layer();
    return diagram.wires().stream().mapToLong(wire -> Math.abs(layer[wire.to()] - layer[wire.from()])).sum();
  }

  /** Assigns layers by longest path, in Kahn's order; a cycle is entered at its first node in the text. */
  private void layer() {
    var ready = new ArrayDeque<Integer>();
    for (int first = 0; first < waiting.length; first++) {
      if (waiting[first] == 0) {
        enter(first, ready);
      }
      goOn(ready);
    }
    for (int first = 0; first < waiting.length; first++) {
      enter(first, ready);
      goOn(ready);
    }
  }

  private void enter(int node, ArrayDeque<Integer> ready) {
    if (!entered[node]) {
      entered[node] = true;
      ready.add(node);
    }
  }

  private void goOn(ArrayDeque<Integer> ready) {
    while (!ready.isEmpty()) {
      int from = ready.remove();
      for (int to : onward.get(from)) {
        waiting[to]--;
        if (!entered[to]) {
          layer[to] = Math.max(layer[to], layer[from] + 1);
          if (waiting[to] == 0) {
            enter(to, ready);
          }
        }
      }
    }
  }
}
