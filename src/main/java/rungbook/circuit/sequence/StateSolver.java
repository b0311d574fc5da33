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

/** Solves the networks of one circuit state, each once for all cases. */
public final class StateSolver implements AutoCloseable {

  private final CircuitModel model;
  private final CircuitState state;
  private final TechnicianOverrides overrides;
  private final Map<ByteBuffer, SolvedNetwork> alternating = new HashMap<>();
  private final Map<ByteBuffer, SolvedNetwork> direct = new HashMap<>();
  private final Set<Network> shared = Collections.newSetFromMap(new IdentityHashMap<>());
  private final FaultedParameters healthy;

  public StateSolver(CircuitModel model, CircuitState state) {
    this.model = model;
    this.state = state;
    this.overrides = new TechnicianOverrides(model.network(), state);
    this.healthy = new FaultedParameters(model.network(), model.parameters(), FaultCase.HEALTHY);
  }

  public CircuitModel model() {
    return model;
  }

  public CircuitState state() {
    return state;
  }

  RelayState initial(boolean[] blown, FaultCase fault) {
    return model.logic().initial(blown, state, fault);
  }

  RelayState next(RelayState now, byte[] levels, boolean[] over, FaultCase fault) {
    return model.logic().next(now, levels, over, state, fault);
  }

  byte[] modes(RelayState relays, FaultCase fault) {
    return model.logic().modes(relays, overrides, fault);
  }

  Network alternating(byte[] modes, FaultCase fault, FaultedParameters faulted) {
    SolvedNetwork base = base(modes, model.alternating(), alternating, model.parameters().currents);
    ComplexRows currents = model.parameters().currents(fault);
    boolean sameSources = currents == model.parameters().currents;
    if (faulted.isEmpty() && sameSources) {
      return base;
    }
    ComplexRows volts = sameSources ? model.alternating().pool().copy(base.volts())
        : base.nodeVoltages(modes, currents);
    return lowRank(base, volts, modes, faulted, model.alternating())
        .orElseGet(() -> solve(model.alternating(), modes, faulted, currents));
  }

  Network direct(byte[] modes, FaultedParameters faulted) {
    ComplexRows none = new ComplexRows(model.network().sources().size(), model.parameters().size());
    SolvedNetwork base = base(modes, model.direct(), direct, none);
    if (faulted.isEmpty()) {
      return base;
    }
    return lowRank(base, model.direct().nodeRows(), modes, faulted, model.direct())
        .orElseGet(() -> solve(model.direct(), modes, faulted, none));
  }

  /** The healthy network of these modes, solved at its first use. */
  private SolvedNetwork base(byte[] modes, NetworkFactory factory, Map<ByteBuffer, SolvedNetwork> known,
      ComplexRows currents) {
    return known.computeIfAbsent(ByteBuffer.wrap(modes), key -> {
      var base = new SolvedNetwork(factory, modes, overrides, healthy, currents);
      shared.add(base);
      return base;
    });
  }

  /** Releases a case's network unless other cases share it. */
  void release(Network network) {
    if (!shared.contains(network)) {
      network.release();
    }
  }

  @Override
  public void close() {
    shared.forEach(Network::release);
  }

  private Optional<Network> lowRank(SolvedNetwork base, ComplexRows volts, byte[] modes, FaultedParameters faulted,
      NetworkFactory factory) {
    if (!faulted.isLowRank()) {
      return Optional.empty();
    }
    List<RankOneUpdate> updates = faulted.updates(modes, overrides, factory.admittances());
    return LowRankNetwork.of(base, volts, updates);
  }

  private Network solve(NetworkFactory factory, byte[] modes, FaultedParameters faulted, ComplexRows currents) {
    return new SolvedNetwork(factory, modes, overrides, faulted, currents);
  }

  /** The same network solved in full, to check the low-rank update against. */
  public Network solveInFull(byte[] modes, FaultCase fault, FaultedParameters faulted) {
    return new SolvedNetwork(model.alternating(), modes, overrides, faulted, model.parameters().currents(fault));
  }
}
