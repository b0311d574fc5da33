package rungbook.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungbook.circuit.Change.Bridge;
import rungbook.circuit.Change.Core;
import rungbook.circuit.Change.Join;
import rungbook.circuit.Change.Open;
import rungbook.circuit.Change.Raise;

/** A case's changes with their numbers, for every sample. */
final class Altered {

  private final Wiring wiring;
  private final Sampled sampled;
  private final boolean[] opened;
  private boolean opens;
  private final Map<Integer, Double> raised = new HashMap<>();
  private final List<Bridge> bridges = new ArrayList<>();
  private final List<Join> joins = new ArrayList<>();
  private final Map<Integer, Core> cores = new HashMap<>();

  Altered(Wiring wiring, Sampled sampled, Case fault) {
    this.wiring = wiring;
    this.sampled = sampled;
    this.opened = new boolean[wiring.links().size()];
    for (Change change : fault.changes()) {
      if (change instanceof Open open) {
        opened[open.link()] = true;
        opens = true;
      } else if (change instanceof Raise raise) {
        raised.merge(raise.link(), raise.ohms(), Double::sum);
      } else if (change instanceof Bridge bridge) {
        bridges.add(bridge);
      } else if (change instanceof Join join) {
        joins.add(join);
      } else if (change instanceof Core core) {
        cores.put(core.coupler(), core);
      }
    }
  }

  boolean opens(int link) {
    return opened[link];
  }

  Core core(int coupler) {
    return cores.get(coupler);
  }

  /** Every change is one between two nodes, and so of rank one. */
  boolean isLowRank() {
    return cores.isEmpty();
  }

  /** Changes nothing that is solved for, whatever it does to the contacts. */
  boolean isEmpty() {
    return !opens && raised.isEmpty() && bridges.isEmpty() && joins.isEmpty() && cores.isEmpty();
  }

  /** The link's admittance: its own row of {@code own}, or what is left of it behind a bad connection. */
  Update effective(int link, Rows own) {
    Link between = wiring.links().get(link);
    Double ohms = raised.get(link);
    if (ohms == null) {
      return new Update(between.a(), between.b(), own.re[link], own.im[link]);
    }
    var row = new Rows(1, sampled.size());
    for (int s = 0; s < sampled.size(); s++) {
      Phasor y = new Phasor(own.re[link][s], own.im[link][s]);
      row.set(0, s, y.over(y.times(ohms).plus(Phasor.ONE)));
    }
    return new Update(between.a(), between.b(), row.re[0], row.im[0]);
  }

  /** How much of its current a load's link still gets for the voltage across it. */
  double[] share(int link, Rows own) {
    double[] share = new double[sampled.size()];
    java.util.Arrays.fill(share, opens(link) ? 0 : 1);
    if (raised.containsKey(link)) {
      for (int s = 0; s < share.length; s++) {
        Phasor y = new Phasor(own.re[link][s], own.im[link][s]);
        share[s] = 1 / y.times(raised.get(link)).plus(Phasor.ONE).magnitude();
      }
    }
    return share;
  }

  boolean touches(int link) {
    return opened[link] || raised.containsKey(link);
  }

  /** The pairs of nodes that are joined beside the links. */
  List<List<Integer>> extraPairs() {
    return Stream.concat(bridges.stream().map(b -> List.of(b.a(), b.b())), joins.stream().map(j -> List.of(j.a(), j.b())))
        .toList();
  }

  /** Bridges and joins. A bridge inside a contact is there while the contact is open; it goes with a part that is taken off. */
  List<Update> extras(Arrangement arrangement) {
    var extras = new ArrayList<Update>();
    for (Bridge bridge : bridges) {
      if (!arrangement.lifted(bridge.link())) {
        extras.add(constant(bridge.a(), bridge.b(), Phasor.of(1 / bridge.ohms())));
      }
    }
    for (Join join : joins) {
      Rows row = sampled.rows(List.of(join.siemens()));
      extras.add(new Update(join.a(), join.b(), row.re[0], row.im[0]));
    }
    return extras;
  }

  private Update constant(int a, int b, Phasor siemens) {
    Rows row = sampled.rows(List.of(draw -> siemens));
    return new Update(a, b, row.re[0], row.im[0]);
  }

  /** What has to be added to the unaltered network of a configuration. */
  List<Update> updates(byte[] modes, Arrangement arrangement, Admittances own) {
    var updates = new ArrayList<Update>();
    for (int link = 0; link < modes.length; link++) {
      if (modes[link] > 0 && touches(link)) {
        updates.add(difference(link, own.of(modes[link])));
      }
    }
    updates.addAll(extras(arrangement));
    return updates;
  }

  private Update difference(int link, Rows own) {
    Link between = wiring.links().get(link);
    var row = new Rows(1, sampled.size());
    if (!opens(link)) {
      Update left = effective(link, own);
      Kernel.add(row.re[0], row.im[0], left.re(), left.im());
    }
    Kernel.subtract(row.re[0], row.im[0], own.re[link], own.im[link]);
    return new Update(between.a(), between.b(), row.re[0], row.im[0]);
  }
}
