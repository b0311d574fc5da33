package rungbook.rules.flow;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rungbook.source.Witness;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.system.logic.ControlState;
import rungbook.system.logic.ContactLogic;
import rungbook.system.logic.SettledContacts;

/**
 * The states of the equipment in which paths reach each step, each as a whole: which position of a control goes with
 * which switch off and which panel open. {@link PathFacts} knows each fact by itself only. A breadth-first search, so
 * each state comes with a shortest path.
 */
public final class JointStates {

  /** Past this many ways taken the search ends; the states found so far are real. */
  private static final int MOST_WAYS = 100_000;

  private final PathFacts state;
  private final ActionTransfer transfer;
  private final WitnessPaths witnesses;
  private final BitSet followed = new BitSet();
  private final List<List<Arrival>> arrivals = new ArrayList<>();
  private final List<Set<BitSet>> known = new ArrayList<>();
  private final Vocabulary words;
  private final List<ContactLogic> forms;
  private final Map<BitSet, List<SettledContacts>> settled = new HashMap<>();

  /** A step reached in one state. */
  public final class Arrival {

    private final int step;
    private final BitSet facts;
    private final int way;
    private final @Nullable Arrival from;

    private Arrival(int step, BitSet facts, int way, @Nullable Arrival from) {
      this.step = step;
      this.facts = facts;
      this.way = way;
      this.from = from;
    }

    /** The facts that hold after so many actions of the step. */
    public BitSet after(int actions) {
      FactDelta delta = new FactDelta((state.facts().count() + 63) >> 6);
      long[] words = facts.toLongArray();
      System.arraycopy(words, 0, delta.on, 0, words.length);
      transfer.apply(step, 0, actions, delta);
      BitSet after = BitSet.valueOf(delta.on);
      after.and(followed);
      return after;
    }

    /** The path; empty once the tree's budget for paths is spent. */
    public Optional<Witness> shown() {
      int length = 0;
      for (Arrival at = this; at.from != null; at = at.from) {
        length++;
      }
      int[] ways = new int[length];
      for (Arrival at = this; at.from != null; at = at.from) {
        ways[--length] = at.way;
      }
      return witnesses.isSpent() ? Optional.empty() : witnesses.along(ways, step, "");
    }
  }

  private JointStates(SystemVariants circuits, PathFacts state, ActionTransfer transfer, WitnessPaths witnesses) {
    this.words = circuits.base().vocabulary();
    this.forms = ContactLogic.of(circuits);
    this.state = state;
    this.transfer = transfer;
    this.witnesses = witnesses;
    List.of(Fact.AT, Fact.ISOLATED, Fact.BYPASSED, Fact.OPEN, Fact.DISCONNECTED)
        .forEach(kind -> followed.set(state.facts().first(kind), state.facts().end(kind)));
    for (int step = 0; step < state.graph().size(); step++) {
      arrivals.add(new ArrayList<>());
      known.add(new HashSet<>());
    }
  }

  static JointStates of(SystemVariants circuits, PathFacts state, ActionTransfer transfer, WitnessPaths witnesses) {
    JointStates joint = new JointStates(circuits, state, transfer, witnesses);
    joint.search();
    return joint;
  }

  /** How a step is reached, the shortest path first. */
  public List<Arrival> at(int step) {
    return arrivals.get(step);
  }

  /** The circuit of the system, then of each variant, settled in a state: what may hurt in one of them counts. */
  public List<SettledContacts> settle(BitSet facts) {
    return settled.computeIfAbsent(facts, any -> {
      ControlState state = controls(any);
      return forms.stream().map(logic -> logic.settle(state)).toList();
    });
  }

  /** The same with every control at its first position: no call starts what is on then. */
  public List<SettledContacts> settleWithNoCall(BitSet facts) {
    BitSet noCall = (BitSet) facts.clone();
    noCall.clear(state.facts().first(Fact.AT), state.facts().end(Fact.AT));
    return settle(noCall);
  }

  /** Facts as the state of the controls; one that the tree does not mention is at its first position. */
  private ControlState controls(BitSet facts) {
    Map<String, String> positions = new HashMap<>();
    words.controls().forEach((control, known) -> known.positions().stream().findFirst()
        .ifPresent(first -> positions.put(control, first)));
    state.facts().eachPosition(facts, positions::put);
    return new ControlState(positions, names(Fact.ISOLATED, facts), names(Fact.BYPASSED, facts),
        names(Fact.DISCONNECTED, facts), names(Fact.OPEN, facts));
  }

  private Set<String> names(Fact kind, BitSet facts) {
    Set<String> names = new HashSet<>();
    int end = state.facts().end(kind);
    for (int fact = facts.nextSetBit(state.facts().first(kind)); fact >= 0 && fact < end; fact = facts
        .nextSetBit(fact + 1)) {
      names.add(state.facts().words(fact));
    }
    return names;
  }

  private void search() {
    if (state.order().length == 0) {
      return;
    }
    BitSet start = new BitSet();
    state.facts().forStart(start::set);
    List<Arrival> queue = new ArrayList<>();
    reach(new Arrival(0, start, 0, null), queue);
    int taken = 0;
    for (int next = 0; next < queue.size() && taken < MOST_WAYS; next++) {
      Arrival at = queue.get(next);
      BitSet after = at.after(transfer.count(at.step));
      FlowGraph graph = state.graph();
      for (int way = graph.firstWay(at.step); way < graph.firstWay(at.step + 1); way++) {
        taken++;
        if (graph.to(way) >= 0) {
          reach(new Arrival(graph.to(way), after, way, at), queue);
        }
      }
    }
  }

  private void reach(Arrival arrival, List<Arrival> queue) {
    if (known.get(arrival.step).add(arrival.facts)) {
      arrivals.get(arrival.step).add(arrival);
      queue.add(arrival);
    }
  }
}
