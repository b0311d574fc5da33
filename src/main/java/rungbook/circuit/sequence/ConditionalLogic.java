package rungbook.circuit.sequence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.ConditionalEffects;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Spread;
import rungbook.system.Condition;
import rungbook.system.Effect;
import rungbook.system.Fault;

/** What faults do while conditions hold: contacts that trip, sights, and quantities outside the circuit. */
final class ConditionalLogic {

  private final Map<Condition, ConditionCompiler.Test> tests = new HashMap<>();
  private final int trips;

  ConditionalLogic(List<Fault> faults, ConditionCompiler compiler) {
    int count = 0;
    for (Fault fault : faults) {
      for (Effect effect : fault.effects()) {
        if (effect instanceof Effect.Trip trip) {
          count++;
          tests.computeIfAbsent(trip.when(), compiler::test);
        } else if (effect instanceof Effect.Show show) {
          tests.computeIfAbsent(show.when(), compiler::test);
        } else if (effect instanceof Effect.Shift shift) {
          tests.computeIfAbsent(shift.when(), compiler::test);
        }
      }
    }
    trips = count;
  }

  /** The most trips that several faults together have. */
  int trips() {
    return trips;
  }

  /** Notes which contacts have tripped; none trips back. */
  void trip(RelayState next, int first, CircuitState state, FaultCase fault) {
    List<ConditionalEffects.Trip> all = fault.conditional().trips();
    for (int i = 0; i < all.size(); i++) {
      next.states[first + i] |= holds(all.get(i).when(), next, state);
    }
  }

  /** Whether a contact has tripped, and is stuck closed; null if it has not. */
  @Nullable
  Boolean tripped(int branch, RelayState relays, int first, FaultCase fault) {
    List<ConditionalEffects.Trip> all = fault.conditional().trips();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).branch() == branch && relays.states[first + i]) {
        return all.get(i).closed();
      }
    }
    return null;
  }

  /** Whether a sight is seen, given what the system says by itself. */
  boolean seen(String sight, boolean bySystem, RelayState relays, CircuitState state, FaultCase fault) {
    boolean seen = bySystem;
    for (ConditionalEffects.Shown shown : fault.conditional().shown()) {
      if (shown.sight().equals(sight) && holds(shown.when(), relays, state)) {
        seen = shown.seen();
      }
    }
    return seen;
  }

  /** The range of a quantity, given that of the system, if it has one. */
  Optional<Spread> range(String quantity, Optional<Spread> bySystem, RelayState relays, CircuitState state,
      FaultCase fault) {
    Optional<Spread> range = bySystem;
    for (ConditionalEffects.Shifted shifted : fault.conditional().shifted()) {
      if (shifted.quantity().equals(quantity) && holds(shifted.when(), relays, state)) {
        range = Optional.of(shifted.range());
      }
    }
    return range;
  }

  private boolean holds(Condition when, RelayState relays, CircuitState state) {
    return Objects.requireNonNull(tests.get(when)).of(relays, state.positions());
  }
}
