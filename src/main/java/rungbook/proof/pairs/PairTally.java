package rungbook.proof.pairs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.proof.JourneySummary;
import rungbook.proof.accounting.Share;
import rungbook.proof.handover.Journeys;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.propagation.RepairRuns;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Proof;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Adds up what one tree does with pairs of faults. */
final class PairTally {

  private static final int MOST_MASKS = 10;

  /** A fault counts as found by itself if at least half of its installations are. */
  private static final double FOUND_ALONE = 0.5;

  private final Proof proof;
  private final Map<String, Double> foundAlone = new HashMap<>();
  private final Map<Journey.Fate, Double> fates = new EnumMap<>(Journey.Fate.class);
  private final List<EveryPair.Mask> masks = new ArrayList<>();
  private double likelihood;
  private int giving;
  private double repaired;
  private double both;
  private double missed;
  private double harmless;

  /** @param proof of the tree with each fault by itself */
  PairTally(Proof proof) {
    this.proof = proof;
    proof.journeys().stream().skip(1)
        .forEach(journey -> foundAlone.put(Names.key(journey.fault()), journey.share(Journey.Fate.FOUND)));
  }

  Tree tree() {
    return proof.tree();
  }

  void add(ProofContext context, PropagationResult result, Journeys journeys) {
    Vocabulary words = tree().system().orElseThrow();
    List<String> names = context.installations().cases().stream().map(key -> words.faults().getOrDefault(key, key))
        .toList();
    int[] cases = context.population().cases();
    List<Journey> followed = new JourneySummary(context, journeys, names).all();
    var candidates = new ArrayList<PairCandidate>();
    for (int i = 1; i < cases.length; i++) {
      add(context, cases[i], followed.get(i), result.repairs());
      candidate(context, words, cases[i], followed.get(i), candidates);
    }
    candidates.sort(Comparator.comparingDouble((PairCandidate one) -> -one.weight()));
    candidates.stream().limit(MOST_MASKS).filter(one -> masks.size() < MOST_MASKS
        || one.weight() > masks.get(MOST_MASKS - 1).likelihood())
        .forEach(one -> masks.add(one.mask(tree(), context, result)));
    masks.sort(Comparator.comparingDouble((EveryPair.Mask one) -> -one.likelihood()));
    masks.subList(Math.min(MOST_MASKS, masks.size()), masks.size()).clear();
  }

  private void add(ProofContext context, int caseNumber, Journey journey, List<RepairRuns> repairs) {
    double weight = context.installations().likelihood(caseNumber);
    giving++;
    likelihood += weight;
    journey.places().forEach(place -> fates.merge(place.fate(), weight * place.share(), Double::sum));
    for (RepairRuns runs : repairs) {
      repaired += weight * runs.right().repaired()[caseNumber];
      both += weight * runs.right().proved()[caseNumber];
      double left = weight * runs.right().left()[caseNumber];
      boolean again = left > 0 && givesAgain(context.installations().faults(caseNumber), runs.finding());
      missed += again ? left : 0;
      harmless += again ? 0 : left;
    }
  }

  /** Whether a fault that the finding does not name gives the complaint by itself; if it names both, either. */
  private boolean givesAgain(List<String> faults, int finding) {
    Set<String> left = new HashSet<>(faults);
    ((Step.Finding) tree().steps().get(finding)).faults().forEach(named -> left.remove(named.key()));
    return (left.isEmpty() ? faults : left).stream().anyMatch(foundAlone::containsKey);
  }

  private void candidate(ProofContext context, Vocabulary words, int caseNumber, Journey journey,
      List<PairCandidate> candidates) {
    List<String> faults = context.installations().faults(caseNumber);
    int[] alone = IntStream.range(0, 2).filter(i -> foundAlone.getOrDefault(faults.get(i), 0.0) >= FOUND_ALONE)
        .toArray();
    double lost = journey.share(Journey.Fate.MISTAKEN) + journey.share(Journey.Fate.HEALTHY);
    if (alone.length > 0 && Share.isReported(lost)) {
      String masked = faults.get(alone[0]);
      String by = faults.get(1 - alone[0]);
      candidates.add(new PairCandidate(caseNumber, words.faults().getOrDefault(masked, masked),
          words.faults().getOrDefault(by, by), alone.length > 1, journey, lost,
          context.installations().likelihood(caseNumber) * lost));
    }
  }

  EveryPair report(int tried, int all, int drawn) {
    double whole = likelihood == 0 ? 1 : likelihood;
    fates.replaceAll((fate, sum) -> sum / whole);
    List<EveryPair.Mask> shown = masks.stream().map(mask -> new EveryPair.Mask(mask.masked(), mask.by(),
        mask.isMutual(), mask.fate(), mask.tree(), mask.title(), mask.share(), mask.likelihood() / whole, mask.path()))
        .toList();
    return new EveryPair(tried, all, giving, drawn, fates, repaired / whole, both / whole,
        Math.max(0, repaired - both - missed - harmless) / whole, missed / whole, harmless / whole, shown);
  }
}
