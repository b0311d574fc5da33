package rungbook.proof.plan;

import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitState;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Meter;
import rungbook.tree.Symptoms;

/**
 * All that a propagation needs beside the tree itself.
 *
 * @param installations whose likelihoods are those on the tree's complaint
 * @param system the installations with the likelihoods of the system
 * @param population the cases and installations that show the complaint
 */
public record ProofContext(Installations installations, Installations system, Population population,
    WalkTimes walkTimes, ProbePlan probePlan, ReachableFindings findings, Situation start,
    EquipmentMemory memory, OtherTrees others) {

  public static ProofContext of(Installations installations, WalkTimes walkTimes, Vocabulary words, Meter meter,
      OtherTrees others) {
    return new ProofContext(installations, installations, Population.everything(installations), walkTimes,
        new ProbePlan(installations, words, meter), new ReachableFindings(
            IntStream.range(0, installations.cases().size()).mapToObj(installations::faults).toList(), others),
        new Situation(CircuitState.start(words), walkTimes.start()), new EquipmentMemory(installations), others);
  }

  /** The same for those that show the complaint, where it is said in the system's words. */
  public ProofContext on(Optional<Symptoms> symptoms, StateEnumeration states) {
    return symptoms.map(words -> on(words, states)).orElse(this);
  }

  private ProofContext on(Symptoms symptoms, StateEnumeration states) {
    return on(Population.of(symptoms, system, Population.statesOf(symptoms, start.state()).stream()
        .map(state -> called(state, states)).toList()));
  }

  /** The same for these cases and installations alone. */
  public ProofContext on(Population shown) {
    return new ProofContext(new ComplaintInstallations(system, shown), system, shown, walkTimes, probePlan, findings,
        start, memory, others);
  }

  /** What is observed in a state of the complaint, where the controls were at the start before. */
  private Installations.Observations called(CircuitState state, StateEnumeration states) {
    var everyCase = new BitSet();
    everyCase.set(0, system.cases().size());
    Installations.Observations observed = system.in(state, states.probes(state));
    observed.expect(everyCase);
    CircuitState left = memory.after(start.state(), state, everyCase);
    return left.equals(state) ? observed : system.in(left, states.probes(state));
  }
}
