package rungbook.pack.circuit;

import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.proof.Suspects;

/** The faults that can still be the cause at each step of a tree, by the numbers of its system. */
public final class StillPossible {

  private static final int SHARES = 1000;

  private final FaultNumbers numbers;
  private final Suspects suspects;
  private final double[] likelihoods;
  private final Map<BitSet, BitSet> known = new HashMap<>();

  StillPossible(FaultNumbers numbers, Suspects suspects) {
    this.numbers = numbers;
    this.suspects = suspects;
    this.likelihoods = new double[numbers.count()];
    suspects.cases().forEach(one -> numbers.of(one.faults())
        .ifPresent(number -> likelihoods[number] = one.likelihood()));
  }

  /**
   * A fault that can still be the cause.
   *
   * @param percent of the likelihood of all that still can
   */
  public record Suspect(String name, long percent) {}

  /** Whether anything is known of a step. One after a finding is about something else. */
  public boolean isKnown(int step) {
    return suspects.arriving().containsKey(step);
  }

  /** The faults that can come to a step, the likeliest first. */
  List<Suspect> at(int step) {
    BitSet here = numbered(suspects.arriving().getOrDefault(step, new BitSet()));
    double all = here.stream().mapToDouble(fault -> likelihoods[fault]).sum();
    List<String> names = numbers.names();
    return here.stream().boxed().sorted(Comparator.comparing(fault -> -likelihoods[fault]))
        .map(fault -> new Suspect(names.get(fault), Math.round(100 * likelihoods[fault] / all))).toList();
  }

  /** The same for the script. */
  public String codeAt(int step) {
    return FaultCode.of(arriving(step));
  }

  private BitSet arriving(int step) {
    return numbered(suspects.arriving().getOrDefault(step, new BitSet()));
  }

  /** For the script, the faults with which an answer can be given; empty where that is with all of them. */
  public Optional<String> code(int step, int way) {
    List<BitSet> ways = suspects.taking().getOrDefault(step, List.of());
    return way < ways.size() && !numbered(ways.get(way)).equals(arriving(step))
        ? Optional.of(FaultCode.of(numbered(ways.get(way)))) : Optional.empty();
  }

  /** For the script, how likely each fault is against the others: whole numbers in the order of the faults. */
  public String likelihoods() {
    double all = IntStream.range(0, likelihoods.length).mapToDouble(fault -> likelihoods[fault]).sum();
    return IntStream.range(0, likelihoods.length)
        .mapToLong(fault -> likelihoods[fault] == 0 ? 0 : Math.max(1, Math.round(SHARES * likelihoods[fault] / all)))
        .mapToObj(Long::toString)
        .collect(Collectors.joining(" "));
  }

  private BitSet numbered(BitSet cases) {
    return known.computeIfAbsent(cases, any -> {
      var faults = new BitSet();
      cases.stream().forEach(one -> numbers.of(suspects.cases().get(one).faults()).ifPresent(faults::set));
      return faults;
    });
  }
}
