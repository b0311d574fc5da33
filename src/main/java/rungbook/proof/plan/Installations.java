package rungbook.proof.plan;

import java.util.List;
import java.util.Set;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;

/**
 * What a meter shows and what people see, for the healthy system (case 0) and each single fault, on many installations
 * that differ within their tolerances.
 */
public interface Installations {

  /** Keys of the cases: {@code healthy}, then the faults in the system's order. */
  List<String> cases();

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
   * The case as which each sample reads once a case's fault is taken away. That is the healthy system, or the fault
   * that is an open fuse or breaker: what the fault has opened stays open until it is renewed.
   *
   * @param renewed keys of what was replaced, repaired or switched on since
   */
  int[] repaired(int caseNumber, Set<String> renewed);

  /** What makes one installation special, in words: {@code furnace supply 114.3 V}. */
  String circumstances(int caseNumber, int sample);

  /** What meters show and people see in one state of the equipment. */
  interface Observations {

    /** The readings of one case, a sample after the other, coded as in {@link rungbook.circuit.Reading}. */
    void readings(int caseNumber, Probe probe, double[] into);

    /** What is seen in one case, a sample after the other. */
    void seen(int caseNumber, String sight, boolean[] into);
  }
}
