package rungbook.proof.plan;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;

/**
 * What a meter shows and what people see, for the healthy system (case 0) and each single fault, on many installations
 * that differ within their tolerances.
 */
public interface Installations {

  /** Keys of the cases: {@code healthy}, then the faults in the system's order. */
  List<String> cases();

  /** Keys of the faults of a case: none of the healthy system, two of a pair. */
  default List<String> faults(int caseNumber) {
    return caseNumber == 0 ? List.of() : List.of(cases().get(caseNumber));
  }

  /** A fault's likelihood against the others; 0 for the healthy system. */
  double likelihood(int caseNumber);

  /** How many installations there are of each case. */
  int samples();

  /**
   * The first so many are drawn at random and give the shares; those after them have their values at the corners of the
   * tolerances.
   */
  int drawn();

  /** Whether the circuit has anything to say at these leads. */
  boolean models(Probe probe);

  /**
   * Whether the system says when this can be seen.
   *
   * @param sight its key
   */
  boolean shows(String sight);

  /**
   * The keys of the values that a sight can show; empty for one that is seen or not. Whether a value is seen is asked
   * for with the sight's key, a space, and the value's.
   *
   * @param sight its key
   */
  default List<String> values(String sight) {
    return List.of();
  }

  /**
   * All that can be observed in one state of the equipment.
   *
   * @param probes every probe that may be asked for
   */
  Observations in(CircuitState state, List<Probe> probes);

  /**
   * What the healthy system reads in one state, by probe, then by sample, coded as in
   * {@link rungbook.circuit.Reading}.
   */
  default double[][] healthy(CircuitState state, List<Probe> probes) {
    Observations observed = in(state, probes);
    double[][] readings = new double[probes.size()][samples()];
    for (int probe = 0; probe < readings.length; probe++) {
      observed.readings(0, probes.get(probe), readings[probe]);
    }
    return readings;
  }

  /**
   * The case as which each sample reads once faults of a case are taken away. That is what is left of the case, or the
   * fault that is an open fuse or breaker: what the faults have opened stays open until it is renewed.
   *
   * @param gone keys of the faults that are taken away
   * @param renewed keys of what was replaced, repaired or switched on since
   */
  int[] repaired(int caseNumber, Set<String> gone, Set<String> renewed);

  /** What makes one installation special, in words: {@code furnace supply 114.3 V}. */
  String circumstances(int caseNumber, int sample);

  /**
   * The variants of the system that the installations are of, the base first.
   *
   * @param name empty for the base
   * @param share of all installations, from 0 to 1
   * @param drawn how many of the drawn installations are of it
   */
  record Variant(String name, double share, int drawn) {}

  default List<Variant> variants() {
    return List.of(new Variant("", 1, drawn()));
  }

  /** Which of {@link #variants} an installation is. */
  default int variant(int sample) {
    return 0;
  }

  /** What an installation counts in a case; 0 if its variant does not have the fault. The mean of those drawn is 1. */
  default double weight(int caseNumber, int sample) {
    return 1;
  }

  /**
   * The installations that are of no such variant.
   *
   * @param variants their keys
   */
  default Installations without(Set<String> variants) {
    return this;
  }

  /** On what before a state it may depend what the equipment does in it. */
  enum Memory {
    NOTHING,
    /** How it was left. */
    STATES,
    /** How long ago as well. */
    DELAYS
  }

  default Memory memory() {
    return Memory.NOTHING;
  }

  /** The case of what is left of a case once faults, by key, are taken away. */
  default int remaining(int caseNumber, Set<String> gone) {
    List<String> left = faults(caseNumber).stream().filter(fault -> !gone.contains(fault)).toList();
    int single = left.size() == 1 ? cases().indexOf(left.get(0)) : -1;
    return left.isEmpty() ? 0 : left.size() < faults(caseNumber).size() && single > 0 ? single : caseNumber;
  }

  /**
   * How cases are left in a state that comes from another: 0 as if everything had been dropped out before, or else
   * another number. A case is left alike wherever it has the same number in the same state.
   */
  default Map<Integer, Integer> left(CircuitState state, BitSet cases) {
    return cases.stream().boxed().collect(Collectors.toMap(one -> one, one -> 0));
  }

  /** How many cases are solved in each state: those of every variant. */
  default int solutions() {
    return cases().size();
  }

  /** What meters show and people see in one state of the equipment. */
  interface Observations {

    /** Says which cases will be asked for: together they cost less than one by one. */
    default void expect(BitSet cases) {}

    /** The readings of one case, a sample after the other, coded as in {@link rungbook.circuit.Reading}. */
    void readings(int caseNumber, Probe probe, double[] into);

    /** What is seen in one case, a sample after the other. */
    void seen(int caseNumber, String sight, boolean[] into);
  }
}
