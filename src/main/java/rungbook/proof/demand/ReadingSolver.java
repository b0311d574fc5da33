package rungbook.proof.demand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.proof.plan.DictionaryInstallations;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.Installations.Observations;
import rungbook.proof.plan.ProbePlan;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.ControlSystem.SightCondition;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Quantity;
import rungbook.tree.Meter;

/**
 * Answers questions about one system with one fault or none, on the installations of a proof. Whether a load
 * is on is asked of the circuit as one more sight. Thread-safe.
 */
public final class ReadingSolver {

  // no sight of a text has a colon in its name
  private static final String ON = "on:";
  private static final String HUMMING = "humming:";

  private final Installations installations;
  private final List<String> loads;
  private final List<String> sights;
  private final int caseNumber;

  private ReadingSolver(ControlSystem system, Optional<Fault> fault, int drawn) {
    loads = system.parts(Part.Load.class).map(Part::key).toList();
    sights = system.sights().stream().map(sight -> Names.key(sight.name())).toList();
    caseNumber = fault.isPresent() ? 1 : 0;
    installations = DictionaryInstallations.of(observed(system, fault.stream().toList()), drawn);
  }

  /** @param system one that was read without problems */
  public static ReadingSolver of(ControlSystem system, Optional<Fault> fault) {
    return of(system, fault, Samples.USUAL);
  }

  /** @param drawn the number of random installations */
  public static ReadingSolver of(ControlSystem system, Optional<Fault> fault, int drawn) {
    return new ReadingSolver(system, fault, drawn);
  }

  private ControlSystem observed(ControlSystem system, List<Fault> faults) {
    var sights = new ArrayList<>(system.sights());
    loads.forEach(load -> {
      sights.add(new SightCondition(ON + load, new Condition.On(load)));
      sights.add(new SightCondition(HUMMING + load, new Condition.Humming(load)));
    });
    return new ControlSystem(system.vocabulary(), system.parts(), faults, sights, system.strips(), List.of(),
        system.quantities());
  }

  /** Solves the circuit for a question of the same system and fault. */
  public ReadingAnswer answer(ReadingQuestion question) {
    Optional<Probe> probe = probe(question);
    Optional<Probe> second = probe.flatMap(first -> ProbePlan.lowImpedance(first, question.meter()));
    Observations observed = installations.in(question.state(),
        Stream.concat(probe.stream(), second.stream()).toList());
    return new ReadingAnswer(question, shown(question, probe, second, observed), activity(observed));
  }

  /** What the system does in a state, without a reading. */
  Activity activity(CircuitState state) {
    return activity(installations.in(state, List.of()));
  }

  private Optional<Probe> probe(ReadingQuestion question) {
    if (question.stated().isPresent()) {
      return question.stated().map(name -> Probe.outside(Names.key(name))).filter(installations::models);
    }
    Optional<MeterFunction> function = ProbePlan.meter(question.quantity());
    if (question.leads().isEmpty() || function.isEmpty()) {
      return Optional.empty();
    }
    double load = ProbePlan.inputOhms(question.meter(), question.quantity(), function.get());
    return Optional.of(new Probe(function.get(), load, question.leads().get(0),
        question.leads().get(question.leads().size() - 1))).filter(installations::models);
  }

  private Shown shown(ReadingQuestion question, Optional<Probe> probe, Optional<Probe> second,
      Observations observed) {
    if (question.leads().isEmpty() && question.stated().isEmpty()) {
      return new Shown.NotAsked();
    }
    if (probe.isEmpty()) {
      boolean isSimulated = question.stated().isEmpty() && ProbePlan.meter(question.quantity()).isPresent();
      return new Shown.Nothing(isSimulated ? NoReading.NOT_WIRED : NoReading.NOT_SIMULATED);
    }
    return ReadingSpread.of(readings(probe.get(), observed), second.map(low -> readings(low, observed)),
        installations.drawn());
  }

  private double[] readings(Probe probe, Observations observed) {
    double[] readings = new double[installations.samples()];
    observed.readings(caseNumber, probe, readings);
    return readings;
  }

  private Activity activity(Observations observed) {
    return new Activity(shares(ON, loads, observed), shares(HUMMING, loads, observed),
        shares("", sights, observed));
  }

  private Map<String, Double> shares(String prefix, List<String> keys, Observations observed) {
    var shares = new HashMap<String, Double>();
    boolean[] seen = new boolean[installations.samples()];
    for (String key : keys) {
      observed.seen(caseNumber, prefix + key, seen);
      double share = share(seen);
      if (share > 0) {
        shares.put(key, share);
      }
    }
    return shares;
  }

  private double share(boolean[] seen) {
    int count = 0;
    for (int sample = 0; sample < installations.drawn(); sample++) {
      count += seen[sample] ? 1 : 0;
    }
    return (double) count / installations.drawn();
  }
}
