package rungbook.circuit.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Past;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Vocabulary;

/** What the equipment keeps from one change to the next. */
public final class Remembered {

  private final List<String> stayingOpen;
  private final int[] loads;
  private final int[] states;
  private final Delays delays;
  private final Set<String> stages;

  /** @param stayingOpen what a {@link RelayState} has as open once it has opened */
  Remembered(CircuitNetwork network, List<String> stayingOpen) {
    this.stayingOpen = stayingOpen;
    Set<String> holding = HoldingCircuits.partsOf(network);
    loads = indexes(network.system().parts(Part.Load.class).toList(), holding);
    List<Part.State> all = network.system().parts(Part.State.class).toList();
    states = indexes(all, holding);
    delays = new Delays(all);
    stages = network.system().vocabulary().controls(Vocabulary.Role.STAGE).stream().map(Names::key)
        .collect(Collectors.toSet());
  }

  private static int[] indexes(List<? extends Part> parts, Set<String> wanted) {
    return IntStream.range(0, parts.size()).filter(i -> wanted.contains(parts.get(i).key())).toArray();
  }

  /** The keys of what stays open once it has opened: fuses and breakers, then switches with manual reset. */
  public List<String> stayingOpen() {
    return stayingOpen;
  }

  /**
   * Whether what follows may depend on how the equipment was left: something holds itself, or other fuses or switches
   * are open than before.
   *
   * @param state that comes from another
   * @param opened what is open where everything was dropped out before
   */
  public boolean isHeld(RelayState before, CircuitState state, boolean[] opened) {
    Past past = state.past().orElseThrow();
    return !Arrays.equals(intact(before.blown, past.renewed()), intact(opened, state.replaced()))
        || (!isNewRun(past.before(), state)
            && (IntStream.of(loads).anyMatch(i -> before.loads[i] != RelayState.OFF)
                || IntStream.of(states).anyMatch(i -> before.states[i] || before.rounds[i] > 0)));
  }

  public boolean hasDelays() {
    return delays.any();
  }

  /**
   * Whether a delay runs, or begins to.
   *
   * @param before how the equipment was left
   * @param over how it is left in the next state once every delay is over
   */
  public boolean isDelayed(RelayState before, RelayState over) {
    return delays.any() && delays.isOtherwise(before, over);
  }

  /** A stage is a moment of a sequence that begins anew. */
  boolean isNewRun(CircuitState from, CircuitState to) {
    return stages.stream().anyMatch(stage -> !Objects.equals(from.positions().get(stage), to.positions().get(stage)));
  }

  /** What is open once some, by key, are replaced or reset. */
  public boolean[] intact(boolean[] open, Set<String> renewed) {
    boolean[] left = open.clone();
    for (int i = 0; i < left.length; i++) {
      left[i] &= !renewed.contains(stayingOpen.get(i));
    }
    return left;
  }
}
