package rungbook.circuit.export;

import static rungbook.text.JsonText.array;
import static rungbook.text.JsonText.object;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Current;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.CoreStamps;
import rungbook.circuit.solver.FaultedParameters;

/**
 * What a case changes: {@code o} the branches that it opens, {@code y} the admittances of those that it alters
 * (de-energized, on, for direct current) with the share of the voltage that is left of each, {@code e} what it adds,
 * {@code t} transformer cores, {@code i} the currents of sources, {@code h} stuck contacts, {@code s} what never comes
 * on, {@code p} pick-up voltages, {@code w} contacts that trip, {@code v} sights.
 */
final class CaseForm {

  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final Pools pools;
  private final StampForm stamps;
  private final ConditionForm conditions;
  private final int[] branchNumbers;
  private final CoreStamps cores;
  private final CoreStamps directCores;

  /** @param branchNumbers the number of each branch among those of all variants */
  CaseForm(CircuitNetwork network, SampledParameters parameters, Pools pools, StampForm stamps, int[] branchNumbers) {
    this.network = network;
    this.parameters = parameters;
    this.pools = pools;
    this.stamps = stamps;
    this.conditions = new ConditionForm(pools.names());
    this.branchNumbers = branchNumbers;
    cores = new CoreStamps(network, parameters, Current.ALTERNATING);
    directCores = new CoreStamps(network, parameters, Current.DIRECT);
  }

  /** The core of a transformer with what a case does to it: its nodes, and the admittances of both kinds of current. */
  String core(int index, FaultedParameters faulted) {
    int[] nodes = network.cores().get(index).nodes();
    return array(List.of(array(IntStream.of(nodes).mapToObj(stamps.nodes()::of).toList()),
        stamps.of(cores.of(index, faulted.changes(index))), stamps.of(directCores.of(index, faulted.changes(index)))));
  }

  /** The current of each source of a case. */
  List<Integer> currents(FaultedParameters faulted) {
    ComplexRows currents = faulted.currents();
    return IntStream.range(0, currents.re.length)
        .mapToObj(i -> pools.quantities().of(currents.re[i], currents.im[i])).toList();
  }

  String of(FaultCase fault, FaultedParameters faulted, FaultedParameters healthy) {
    var fields = new LinkedHashMap<String, String>();
    put(fields, "o", faulted.touched().stream().filter(faulted::opens).mapToObj(i -> branchNumbers[i]).toList());
    Map<String, String> altered = new LinkedHashMap<>();
    faulted.touched().stream().filter(i -> !faulted.opens(i))
        .forEach(i -> altered.put(String.valueOf(branchNumbers[i]), altered(i, faulted)));
    put(fields, "y", altered);
    put(fields, "e", faulted.extras().stream().map(this::extra).toList());
    Map<String, String> changedCores = new LinkedHashMap<>();
    faulted.cores().forEach(index -> changedCores.put(String.valueOf(index), core(index, faulted)));
    put(fields, "t", changedCores);
    if (faulted.currents() != healthy.currents()) {
      put(fields, "i", currents(faulted));
    }
    logic(fault, fields);
    return object(fields);
  }

  private void logic(FaultCase fault, Map<String, String> fields) {
    Map<String, Object> holds = new LinkedHashMap<>();
    new TreeMap<>(fault.holds())
        .forEach((branch, closed) -> holds.put(String.valueOf(branchNumbers[branch]), bit(closed)));
    put(fields, "h", holds);
    put(fields, "s", fault.stopped().stream().sorted().map(pools.names()::of).toList());
    Map<String, Object> pickUps = new LinkedHashMap<>();
    new TreeMap<>(fault.pickUps()).forEach((load, volts) -> pickUps.put(String.valueOf(pools.names().of(load)),
        pools.quantities().of(parameters.values(volts::at))));
    put(fields, "p", pickUps);
    put(fields, "w", fault.conditional().trips().stream()
        .map(trip -> array(List.of(branchNumbers[trip.branch()], bit(trip.closed()), conditions.of(trip.when()))))
        .toList());
    put(fields, "v", fault.conditional().shown().stream().map(shown -> array(
        List.of(pools.names().of(shown.sight()), bit(shown.seen()), conditions.of(shown.when())))).toList());
  }

  private static int bit(boolean isSet) {
    return isSet ? 1 : 0;
  }

  private static void put(Map<String, String> fields, String name, List<?> values) {
    if (!values.isEmpty()) {
      fields.put(name, array(values));
    }
  }

  private static void put(Map<String, String> fields, String name, Map<String, ?> values) {
    if (!values.isEmpty()) {
      fields.put(name, object(values));
    }
  }

  private String altered(int branch, FaultedParameters faulted) {
    ComplexRows released = parameters.alternating(BranchMode.CLOSED);
    return array(Stream.of(admittance(faulted.effective(branch, released)),
        admittance(faulted.effective(branch, parameters.on)), admittance(faulted.effective(branch, parameters.direct)),
        pools.quantities().of(faulted.share(branch, released)),
        pools.quantities().of(faulted.share(branch, parameters.on))).toList());
  }

  private int admittance(BranchAdmittance siemens) {
    return pools.quantities().of(siemens.re(), siemens.im());
  }

  private String extra(FaultedParameters.Extra extra) {
    return array(List.of(extra.branch() < 0 ? -1 : branchNumbers[extra.branch()], stamps.of(extra.siemens())));
  }
}
