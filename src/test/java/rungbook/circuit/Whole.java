package rungbook.circuit;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.CircuitState;

/** Solves every case of a dictionary. */
public final class Whole {

  private Whole() {}

  public static ReadingTable table(Dictionary dictionary, CircuitState state, List<Probe> probes) {
    return dictionary.table(state, probes, everyCase(dictionary));
  }

  static Map<CircuitState, ReadingTable> tables(Dictionary dictionary, Map<CircuitState, List<Probe>> probes) {
    var tables = new LinkedHashMap<CircuitState, ReadingTable>();
    probes.forEach((state, list) -> tables.put(state, dictionary.empty(list)));
    dictionary.solve(tables, everyCase(dictionary));
    return tables;
  }

  private static BitSet everyCase(Dictionary dictionary) {
    var every = new BitSet();
    every.set(0, dictionary.cases().size());
    return every;
  }
}
