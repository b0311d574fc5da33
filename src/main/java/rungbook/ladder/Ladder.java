package rungbook.ladder;

import java.util.Comparator;
import java.util.List;
import rungbook.system.ControlSystem;
import rungbook.system.Part;

/**
 * A system as rungs.
 *
 * @param blocks line voltage first
 * @param logic what boards do inside, in the order of the text
 */
public record Ladder(String title, List<VoltageBlock> blocks, List<Logic> logic) {

  /**
   * A state: no part of the circuit, but contacts follow it.
   *
   * @param when in words
   */
  public record Logic(String name, String when) {}

  public Ladder {
    blocks = List.copyOf(blocks);
    logic = List.copyOf(logic);
  }

  /** @param system one that was read without problems */
  public static Ladder of(ControlSystem system) {
    var words = new ConditionWords(system);
    var numbers = new RungNumbers();
    List<VoltageBlock> blocks = CircuitGraph.of(system).islands().stream()
        .sorted(Comparator.comparingInt(Island::rank)).map(island -> island.block(numbers)).toList();
    return new Ladder(system.vocabulary().title(), blocks,
        system.parts(Part.State.class).map(state -> new Logic(state.name(), words.of(state))).toList());
  }
}
