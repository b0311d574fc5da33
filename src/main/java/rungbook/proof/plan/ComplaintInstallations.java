package rungbook.proof.plan;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;

/**
 * The installations of a system as a complaint weighs them: a fault is as likely as it is in the system, times the
 * share of its installations that shows the complaint.
 */
record ComplaintInstallations(Installations all, Population population) implements Installations {

  @Override
  public List<String> cases() {
    return all.cases();
  }

  @Override
  public List<String> faults(int caseNumber) {
    return all.faults(caseNumber);
  }

  @Override
  public double likelihood(int caseNumber) {
    return all.likelihood(caseNumber) * population.shown(caseNumber);
  }

  @Override
  public double weight(int caseNumber, int sample) {
    return all.weight(caseNumber, sample) * population.factor(caseNumber, sample);
  }

  @Override
  public List<Variant> variants() {
    return all.variants();
  }

  @Override
  public int variant(int sample) {
    return all.variant(sample);
  }

  @Override
  public Installations without(Set<String> variants) {
    return all.without(variants);
  }

  @Override
  public int solutions() {
    return all.solutions();
  }

  @Override
  public int samples() {
    return all.samples();
  }

  @Override
  public int drawn() {
    return all.drawn();
  }

  @Override
  public boolean models(Probe probe) {
    return all.models(probe);
  }

  @Override
  public boolean shows(String sight) {
    return all.shows(sight);
  }

  @Override
  public List<String> values(String sight) {
    return all.values(sight);
  }

  @Override
  public Observations in(CircuitState state, List<Probe> probes) {
    return all.in(state, probes);
  }

  @Override
  public Memory memory() {
    return all.memory();
  }

  @Override
  public Map<Integer, Integer> left(CircuitState state, BitSet cases) {
    return all.left(state, cases);
  }

  @Override
  public int[] repaired(int caseNumber, Set<String> gone, Set<String> renewed) {
    return all.repaired(caseNumber, gone, renewed);
  }

  @Override
  public String circumstances(int caseNumber, int sample) {
    return all.circumstances(caseNumber, sample);
  }
}
