package rungbook.proof;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.TestabilityMeasures;
import rungbook.proof.handover.Journeys;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.TreeClaims;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.CaseFlow;
import rungbook.proof.propagation.End;
import rungbook.proof.propagation.IntermittentRun;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.rules.WitnessBudget;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.LimitAnalysis;
import rungbook.proof.report.Proof;
import rungbook.proof.rules.ProofRuleContext;
import rungbook.system.Vocabulary;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Adds up what a propagation found into a {@link Proof}. */
final class ProofBuilder {

  /** A fault that arrives less often than this does not make a finding's group larger. */
  private static final double IN_GROUP = 0.01;

  private final Tree tree;
  private final ProofContext context;
  private final StateEnumeration states;
  private final PropagationResult propagation;
  private final IntermittentRun intermittent;
  private final Journeys journeys;
  private final CaseFlow flow;
  private final Installations installations;
  private final Vocabulary words;
  private final List<String> names;
  private final List<ArrivalTable.Arrivals> ends;
  private final EndTable endTable;
  private final BitSet population = new BitSet();
  private final BitSet claimed = new BitSet();
  private double allLikelihood;

  ProofBuilder(Tree tree, ProofContext context, StateEnumeration states, PropagationResult propagation,
      IntermittentRun intermittent, Journeys journeys, Vocabulary words) {
    this.intermittent = intermittent;
    this.tree = tree;
    this.states = states;
    this.context = context;
    this.propagation = propagation;
    this.journeys = journeys;
    this.flow = propagation.flow();
    this.installations = context.installations();
    this.words = words;
    names = IntStream.range(0, installations.cases().size()).mapToObj(this::name).toList();
    ends = propagation.ends().stream().sorted(Comparator.comparingInt(this::place)).toList();
    endTable = new EndTable(tree, context.findings(), ends);
    for (int i : context.population().cases()) {
      population.set(i);
      allLikelihood += installations.likelihood(i);
    }
    tree.steps().stream().filter(Step.Finding.class::isInstance)
        .forEach(step -> claimed.or(context.findings().named((Step.Finding) step)));
    claimed.and(population);
  }

  private String name(int caseNumber) {
    return caseNumber == 0 ? installations.cases().get(0) : installations.faults(caseNumber).stream()
        .map(key -> words.faults().getOrDefault(key, key)).collect(Collectors.joining(" and "));
  }

  /** Findings in the order of the text, then trees that take over, then where it stops. */
  private int place(ArrivalTable.Arrivals arrivals) {
    if (arrivals.end() instanceof End.Stuck stuck) {
      return 2 * tree.steps().size() + stuck.step();
    }
    return arrivals.end() instanceof End.AtStep at ? at.step() : tree.steps().size();
  }

  Proof proof() {
    List<Proof.Outcome> outcomes = new ArrayList<>();
    for (int i : context.population().cases()) {
      outcomes.add(outcome(i));
    }
    List<Proof.Check> checks = propagation.tallies().values().stream().map(this::check)
        .sorted(Comparator.comparingInt(Proof.Check::step)).toList();
    List<Proof.Ending> endings = ends.stream().map(this::ending).toList();
    Complaint complaint = new ComplaintSummary(tree, context, names).complaint();
    Proof proof = new Proof(tree, complaint, outcomes, endings, checks, ways(), installations.drawn(),
        installations.samples() - installations.drawn(),
        measures(claimed), measures(faults()), falseAlarmShare(), mean(flow::checks), mean(flow::minutes),
        falseAlarms(), new VariantSummary(installations, names, claimed, endTable).all(),
        new RepairSummary(tree, installations, names).of(propagation.repairs()),
        new PairSummary(context, words, endTable, propagation.repairs()).all(),
        new IntermittentSummary(tree, context, names, propagation, intermittent).all(),
        propagation.unmodeled().values().stream().toList(), new JourneySummary(context, journeys, names).all(),
        List.of());
    var rules = new ProofRuleContext(tree, context, propagation, states.deadProofs(), names, ends, journeys,
        proof, new WitnessBudget());
    return proof.with(rules.problems());
  }

  private BitSet faults() {
    BitSet faults = (BitSet) population.clone();
    faults.clear(0);
    return faults;
  }

  private Proof.Check check(CheckTally tally) {
    List<Proof.Limit> limits = new LimitAnalysis(tally, installations, names).all();
    return new Proof.Check(tally.step(), tally.check().title(), limits, tally.histogram(), tally.meterRisks(),
        tally.inconclusiveShare(), bands(tally), reads(tally));
  }

  private static List<Proof.Band> bands(CheckTally tally) {
    double digit = tally.readings().digit().doubleValue();
    return IntStream.range(0, tally.segments().size())
        .mapToObj(i -> new Proof.Band(tally.segments().from(i) * digit, tally.segments().way(i))).toList();
  }

  private List<Proof.Reads> reads(CheckTally tally) {
    var byCase = tally.byCase();
    Comparator<Integer> healthyFirst = Comparator.comparing(i -> i != 0);
    return IntStream.range(0, names.size()).filter(byCase::has).boxed()
        .sorted(healthyFirst.thenComparing(i -> -byCase.weight(i)))
        .map(i -> new Proof.Reads(names.get(i), i == 0, byCase.lowest(i), byCase.highest(i))).toList();
  }

  private Proof.Outcome outcome(int caseNumber) {
    EndShares at = endTable.of(caseNumber);
    return new Proof.Outcome(names.get(caseNumber), installations.likelihood(caseNumber), claimed.get(caseNumber),
        at.found(), at.mistaken(), at.healthy(), at.referred(), at.handedOn(), at.nothing(), flow.checks(caseNumber),
        flow.minutes(caseNumber));
  }

  private double falseAlarmShare() {
    return endTable.of(0).mistaken();
  }

  private List<Proof.FalseAlarm> falseAlarms() {
    List<Proof.FalseAlarm> alarms = new ArrayList<>();
    for (ArrivalTable.Arrivals arrivals : ends) {
      int sample = arrivals.witness()[0];
      if (sample >= 0 && arrivals.end() instanceof End.Finding end
          && tree.steps().get(end.step()) instanceof Step.Finding finding
          && !finding.faults().isEmpty()) {
        alarms.add(new Proof.FalseAlarm(end.step(), finding.title(), arrivals.shares()[0], sample,
            installations.circumstances(0, sample)));
      }
    }
    return alarms;
  }

  private double mean(IntToDoubleFunction byCase) {
    double sum = 0;
    double weight = 0;
    for (int i = claimed.nextSetBit(0); i >= 0; i = claimed.nextSetBit(i + 1)) {
      sum += installations.likelihood(i) * byCase.applyAsDouble(i);
      weight += installations.likelihood(i);
    }
    return weight == 0 ? 0 : sum / weight;
  }

  private List<Proof.WayFlow> ways() {
    List<Proof.WayFlow> ways = new ArrayList<>();
    for (int step = 0; step < tree.steps().size(); step++) {
      for (int way = 0; way < tree.steps().get(step).ways().size(); way++) {
        double likelihood = 0;
        for (int i = 1; i < names.size(); i++) {
          likelihood += installations.likelihood(i) * taken(step, way, i);
        }
        ways.add(new Proof.WayFlow(step, way, flow.taken(step, way, 0),
            allLikelihood == 0 ? 0 : likelihood / allLikelihood));
      }
    }
    return ways;
  }

  /** Before a finding as the tree is followed, after it as the right repair goes on. */
  private double taken(int step, int way, int caseNumber) {
    return flow.taken(step, way, caseNumber)
        + propagation.repairs().stream().mapToDouble(repair -> repair.flow().taken(step, way, caseNumber)).sum();
  }

  private Proof.Ending ending(ArrivalTable.Arrivals arrivals) {
    BitSet named = named(arrivals);
    List<Proof.Arrived> arrived = new ArrayList<>();
    double likelihood = 0;
    for (int i = 0; i < names.size(); i++) {
      if (arrivals.witness()[i] >= 0) {
        arrived.add(new Proof.Arrived(names.get(i), arrivals.shares()[i], named.get(i)));
        likelihood += installations.likelihood(i) * arrivals.shares()[i];
      }
    }
    arrived.sort(Comparator.comparingDouble((Proof.Arrived one) -> -one.share()));
    return new Proof.Ending(arrivals.end(), title(arrivals.end()), named.stream().mapToObj(names::get).toList(),
        arrived,
        allLikelihood == 0 ? 0 : likelihood / allLikelihood, group(arrivals));
  }

  private String title(End end) {
    if (end instanceof End.HandedOn on) {
      return context.others().claims(on.tree()).map(TreeClaims::title).orElse(on.tree());
    }
    return tree.steps().get(((End.AtStep) end).step()).title();
  }

  private BitSet named(ArrivalTable.Arrivals arrivals) {
    return arrivals.end() instanceof End.Finding end
        ? context.findings().named((Step.Finding) tree.steps().get(end.step())) : new BitSet();
  }

  /**
   * The faults that a finding leaves: those it names, and those that come here without being named. Two faults of which
   * it names one are no group of their own.
   */
  private int group(ArrivalTable.Arrivals arrivals) {
    BitSet named = named(arrivals);
    BitSet group = (BitSet) named.clone();
    group.and(population);
    for (int i = 1; i < names.size(); i++) {
      if (named.get(i) && installations.faults(i).size() > 1) {
        group.clear(i);
      } else if (arrivals.shares()[i] >= IN_GROUP) {
        group.set(i);
      }
    }
    return group.cardinality();
  }

  private TestabilityMeasures measures(BitSet faults) {
    int[] sizes = ends.stream().mapToInt(this::group).toArray();
    List<BitSet> named = ends.stream().map(this::named).toList();
    int[] cases = faults.stream().toArray();
    double[] likelihoods = new double[cases.length];
    double[][] found = new double[cases.length][ends.size()];
    for (int i = 0; i < cases.length; i++) {
      likelihoods[i] = installations.likelihood(cases[i]);
      for (int end = 0; end < ends.size(); end++) {
        found[i][end] = named.get(end).get(cases[i]) ? ends.get(end).shares()[cases[i]] : 0;
      }
    }
    return TestabilityMeasures.of(likelihoods, found, sizes)
        .ofFaults((int) IntStream.of(cases).filter(i -> installations.faults(i).size() == 1).count());
  }
}
