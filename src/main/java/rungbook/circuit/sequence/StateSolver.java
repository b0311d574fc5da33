package rungbook.circuit.sequence;

import java.nio.ByteBuffer;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.LowRankNetwork;
import rungbook.circuit.solver.Network;
import rungbook.circuit.solver.NetworkFactory;
import rungbook.circuit.solver.SolvedNetwork;
import rungbook.circuit.solver.TechnicianOverrides;

/** One circuit state: its networks, made once and shared by all cases. */
public final class StateSolver implements AutoCloseable {

  private final CircuitModel plant;
  private final CircuitState state;
  private final TechnicianOverrides arrangement;
  private final Map<ByteBuffer, SolvedNetwork> alternating = new HashMap<>();
  private final Map<ByteBuffer, SolvedNetwork> direct = new HashMap<>();
  private final Set<Network> shared = Collections.newSetFromMap(new IdentityHashMap<>());
  private final FaultedParameters unaltered;

  public StateSolver(CircuitModel plant, CircuitState state) {
    this.plant = plant;
    this.state = state;
    this.arrangement = new TechnicianOverrides(plant.wiring(), state);
    this.unaltered = new FaultedParameters(plant.wiring(), plant.sampled(), FaultCase.HEALTHY);
  }

  public CircuitModel plant() {
    return plant;
  }

  public CircuitState state() {
    return state;
  }

  RelayState rest(boolean[] blown, FaultCase fault) {
    return plant.logic().rest(blown, state, fault);
  }

  RelayState next(RelayState now, byte[] levels, boolean[] over, FaultCase fault) {
    return plant.logic().next(now, levels, over, state, fault);
  }

  byte[] modes(RelayState standing, FaultCase fault) {
    return plant.logic().configuration(standing, arrangement, fault);
  }

  Network alternating(byte[] modes, FaultCase fault, FaultedParameters altered) {
    SolvedNetwork base = base(modes, plant.alternating(), alternating, plant.sampled().currents);
    ComplexRows currents = plant.sampled().currents(fault);
    boolean sameSources = currents == plant.sampled().currents;
    if (altered.isEmpty() && sameSources) {
      return base;
    }
    ComplexRows volts = sameSources ? plant.alternating().pool().copy(base.volts()) : base.driven(modes, currents);
    return modified(base, volts, modes, altered, plant.alternating())
        .orElseGet(() -> whole(plant.alternating(), modes, altered, currents));
  }

  Network direct(byte[] modes, FaultedParameters altered) {
    ComplexRows none = new ComplexRows(plant.wiring().drives().size(), plant.sampled().size());
    SolvedNetwork base = base(modes, plant.direct(), direct, none);
    if (altered.isEmpty()) {
      return base;
    }
    return modified(base, plant.direct().nodeRows(), modes, altered, plant.direct())
        .orElseGet(() -> whole(plant.direct(), modes, altered, none));
  }

  private SolvedNetwork base(byte[] modes, NetworkFactory blueprint, Map<ByteBuffer, SolvedNetwork> known,
      ComplexRows currents) {
    return known.computeIfAbsent(ByteBuffer.wrap(modes), key -> {
      var base = new SolvedNetwork(blueprint, modes, arrangement, unaltered, currents);
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

  private Optional<Network> modified(SolvedNetwork base, ComplexRows volts, byte[] modes, FaultedParameters altered,
      NetworkFactory blueprint) {
    if (!altered.isLowRank()) {
      return Optional.empty();
    }
    List<RankOneUpdate> updates = altered.updates(modes, arrangement, blueprint.admittances());
    return LowRankNetwork.of(base, volts, updates);
  }

  private Network whole(NetworkFactory blueprint, byte[] modes, FaultedParameters altered, ComplexRows currents) {
    return new SolvedNetwork(blueprint, modes, arrangement, altered, currents);
  }

  /** The same network, always solved in full: what the low-rank way is held to. */
  public Network inFull(byte[] modes, FaultCase fault, FaultedParameters altered) {
    return new SolvedNetwork(plant.alternating(), modes, arrangement, altered, plant.sampled().currents(fault));
  }
}
