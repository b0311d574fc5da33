package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.HoldingCircuits;
import rungbook.system.ControlSystem;
import rungbook.system.Vocabulary;

/**
 * In a system that holds nothing, the relays end alike however a state was reached, with every fault. Here they always
 * go on from where they were, which the dictionary leaves out for such a system.
 */
class MemoryWalkTest {

  private static final long SEED = 11;
  private static final int STEPS = 10;

  private final ControlSystem system = Systems.read("fan-coil-electric-heat");
  private final Dictionary dictionary = Dictionary.of(system, new Samples(List.of(Draw.MIDDLE)));
  private final Random random = new Random(SEED);

  @Test
  void aWalkEndsAsEachOfItsStatesByItself() {
    assertFalse(HoldingCircuits.anyIn(dictionary.network()));
    CircuitState state = CircuitState.start(system.vocabulary());
    for (int step = 0; step < STEPS; step++) {
      CircuitState next = moved(state);
      for (int number = 0; number < dictionary.cases().size(); number++) {
        assertEquals(Settle.of(dictionary, next, number, Draw.MIDDLE).steadyState().relays(),
            Settle.of(dictionary, next.from(state, Set.of()), number, Draw.MIDDLE).steadyState().relays(),
            dictionary.cases().get(number) + " from " + state + " to " + next);
      }
      state = next;
    }
  }

  /** A selector or a power switch, moved by chance. */
  private CircuitState moved(CircuitState state) {
    Vocabulary words = system.vocabulary();
    List<Vocabulary.Control> selectors = words.controls().values().stream()
        .filter(control -> !control.positions().isEmpty()).toList();
    List<String> isolators = words.controls(Vocabulary.Role.ISOLATOR);
    return switch (random.nextInt(6)) {
      case 0 -> state.isolate(isolators.get(random.nextInt(isolators.size())));
      case 1, 2 -> state.withPower();
      default -> {
        Vocabulary.Control control = selectors.get(random.nextInt(selectors.size()));
        yield state.set(control.name(), control.positions().get(random.nextInt(control.positions().size())));
      }
    };
  }
}
