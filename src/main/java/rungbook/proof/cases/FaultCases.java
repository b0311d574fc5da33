package rungbook.proof.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.FaultPair;
import rungbook.system.PartBranch;

/**
 * The cases of a system that are solved: the healthy system, which is case 0, each fault by itself, then pairs of
 * faults.
 */
public final class FaultCases {

  private final ControlSystem system;
  private final List<List<Fault>> together;
  private final double[] likelihoods;
  private final List<List<String>> faults;
  private final Map<Set<String>, Integer> byFaults = new HashMap<>();
  private final Map<String, Optional<String>> openFuses = new ConcurrentHashMap<>();

  private FaultCases(ControlSystem system, List<List<Fault>> together, double[] likelihoods) {
    this.system = system;
    this.together = together;
    this.likelihoods = likelihoods;
    faults = Stream.concat(Stream.of(List.<Fault>of()), together.stream())
        .map(ofCase -> ofCase.stream().map(Fault::key).toList()).toList();
    for (int i = 0; i < faults.size(); i++) {
      byFaults.putIfAbsent(Set.copyOf(faults.get(i)), i);
    }
  }

  /** Every fault by itself, and the pairs that the system states. Two lines that state the same pair make one case. */
  public static FaultCases of(ControlSystem system) {
    Map<String, Double> alone = new HashMap<>();
    system.faults().forEach(fault -> alone.put(fault.key(), fault.likelihood()));
    Map<Set<String>, Double> pairs = new LinkedHashMap<>();
    for (FaultPair pair : system.pairs()) {
      double both = pair.share() * likelihood(system, pair.first());
      pairs.merge(Set.of(pair.first(), pair.second()), both, Double::sum);
      alone.merge(pair.first(), -both, Double::sum);
    }
    List<List<Fault>> together = new ArrayList<>(system.faults().stream().map(List::of).toList());
    pairs.keySet().forEach(pair -> together.add(inOrder(system, pair)));
    double[] likelihoods = IntStream.range(0, together.size())
        .mapToDouble(i -> i < system.faults().size() ? alone.getOrDefault(together.get(i).get(0).key(), 0.0)
            : pairs.getOrDefault(keys(together.get(i)), 0.0))
        .toArray();
    return new FaultCases(system, together, likelihoods);
  }

  /**
   * Every fault by itself, at no likelihood, then some pairs, each as likely as two independent faults are together.
   *
   * @param pairs indexes of faults
   */
  public static FaultCases of(ControlSystem system, List<int[]> pairs) {
    List<Fault> faults = system.faults();
    List<List<Fault>> together = new ArrayList<>(faults.stream().map(List::of).toList());
    pairs.forEach(pair -> together.add(List.of(faults.get(pair[0]), faults.get(pair[1]))));
    double[] likelihoods = together.stream()
        .mapToDouble(both -> both.size() == 1 ? 0 : both.get(0).likelihood() * both.get(1).likelihood()).toArray();
    return new FaultCases(system, together, likelihoods);
  }

  private static double likelihood(ControlSystem system, String key) {
    return system.faults().stream().filter(fault -> fault.key().equals(key)).findFirst().orElseThrow().likelihood();
  }

  private static List<Fault> inOrder(ControlSystem system, Set<String> keys) {
    return system.faults().stream().filter(fault -> keys.contains(fault.key())).toList();
  }

  private static Set<String> keys(List<Fault> faults) {
    return faults.stream().map(Fault::key).collect(Collectors.toUnmodifiableSet());
  }

  /** The faults of each case but the healthy one. */
  public List<List<Fault>> together() {
    return together;
  }

  /** Keys of the faults of a case. */
  public List<String> faults(int caseNumber) {
    return faults.get(caseNumber);
  }

  public List<Effect> effects(int caseNumber) {
    return caseNumber == 0 ? List.of()
        : together.get(caseNumber - 1).stream().flatMap(fault -> fault.effects().stream()).toList();
  }

  public double likelihood(int caseNumber) {
    return caseNumber == 0 ? 0 : likelihoods[caseNumber - 1];
  }

  /** The case with exactly these faults. */
  public Optional<Integer> with(Set<String> faults) {
    return Optional.ofNullable(byFaults.get(faults));
  }

  /** The fault that is nothing but an open fuse or breaker. */
  public Optional<String> openFuse(String key) {
    return openFuses.computeIfAbsent(key, this::opening);
  }

  private Optional<String> opening(String key) {
    Set<String> limbs = system.part(key).stream().flatMap(part -> part.branches().stream()).map(PartBranch::key)
        .collect(Collectors.toSet());
    return system.faults().stream().filter(fault -> opens(fault, limbs)).map(Fault::key).findFirst();
  }

  private static boolean opens(Fault fault, Set<String> limbs) {
    Set<String> open = fault.effects().stream().filter(Effect.Open.class::isInstance)
        .map(effect -> ((Effect.Open) effect).branch()).collect(Collectors.toSet());
    return open.equals(limbs) && open.size() == fault.effects().size();
  }
}
