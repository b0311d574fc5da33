package rungbook.circuit;

import java.nio.ByteBuffer;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One circuit state: its networks, made once and shared by all cases. */
final class Run implements AutoCloseable {

  private final Plant plant;
  private final CircuitState state;
  private final Arrangement arrangement;
  private final Map<ByteBuffer, Whole> alternating = new HashMap<>();
  private final Map<ByteBuffer, Whole> direct = new HashMap<>();
  private final Set<Network> shared = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Altered unaltered;

  Run(Plant plant, CircuitState state) {
    this.plant = plant;
    this.state = state;
    this.arrangement = new Arrangement(plant.wiring(), state);
    this.unaltered = new Altered(plant.wiring(), plant.sampled(), Case.HEALTHY);
  }

  Plant plant() {
    return plant;
  }

  CircuitState state() {
    return state;
  }

  Standing rest(boolean[] blown, Case fault) {
    return plant.logic().rest(blown, state, fault);
  }

  Standing next(Standing now, byte[] levels, boolean[] over, Case fault) {
    return plant.logic().next(now, levels, over, state, fault);
  }

  byte[] modes(Standing standing, Case fault) {
    return plant.logic().configuration(standing, arrangement, fault);
  }

  Network alternating(byte[] modes, Case fault, Altered altered) {
    Whole base = base(modes, plant.alternating(), alternating, plant.sampled().currents);
    Rows currents = plant.sampled().currents(fault);
    boolean sameSources = currents == plant.sampled().currents;
    if (altered.isEmpty() && sameSources) {
      return base;
    }
    Rows volts = sameSources ? plant.alternating().pool().copy(base.volts()) : base.driven(modes, currents);
    return modified(base, volts, modes, altered, plant.alternating())
        .orElseGet(() -> whole(plant.alternating(), modes, altered, currents));
  }

  Network direct(byte[] modes, Altered altered) {
    Rows none = new Rows(plant.wiring().drives().size(), plant.sampled().size());
    Whole base = base(modes, plant.direct(), direct, none);
    if (altered.isEmpty()) {
      return base;
    }
    return modified(base, plant.direct().nodeRows(), modes, altered, plant.direct())
        .orElseGet(() -> whole(plant.direct(), modes, altered, none));
  }

  private Whole base(byte[] modes, Blueprint blueprint, Map<ByteBuffer, Whole> known, Rows currents) {
    return known.computeIfAbsent(ByteBuffer.wrap(modes), key -> {
      var base = new Whole(blueprint, modes, arrangement, unaltered, currents);
      shared.add(base);
      return base;
    });
  }

  /** Lets go of a case's network, unless it serves other cases too. */
  void release(Network network) {
    if (!shared.contains(network)) {
      network.release();
    }
  }

  @Override
  public void close() {
    shared.forEach(Network::release);
  }

  private Optional<Network> modified(Whole base, Rows volts, byte[] modes, Altered altered, Blueprint blueprint) {
    if (!altered.isLowRank()) {
      return Optional.empty();
    }
    List<Update> updates = altered.updates(modes, arrangement, blueprint.admittances());
    return Modified.of(base, volts, updates);
  }

  private Network whole(Blueprint blueprint, byte[] modes, Altered altered, Rows currents) {
    return new Whole(blueprint, modes, arrangement, altered, currents);
  }

  /** The same network, always solved in full: what the low-rank way is held to. */
  Network inFull(byte[] modes, Case fault, Altered altered) {
    return new Whole(plant.alternating(), modes, arrangement, altered, plant.sampled().currents(fault));
  }
}
