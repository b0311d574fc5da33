package rungbook.circuit.export;

import static rungbook.text.JsonText.array;
import static rungbook.text.JsonText.string;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.BranchMode;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.text.JsonText;

/**
 * A system in every form as JSON: {@code rows} and {@code q} with the quantities of all installations, {@code nodes}
 * (how many), {@code branches}, {@code cases}, {@code pieces}, {@code variants} (the base first), and what is the same
 * in all. Formulas stay here: the solver of a page gets admittances, not the lengths and powers that they follow from.
 */
public final class CircuitExport {

  private CircuitExport() {}

  /**
   * Writes the fields of an object, so that a page can add its own.
   *
   * @param systems that were read without problems and are small enough to be solved
   * @param inputOhms of the meter, by the function of volts
   * @param names receives the keys that the fields name by number
   */
  public static Map<String, String> fields(SystemVariants systems, Samples installations,
      Map<MeterFunction, Double> inputOhms, Interned names) {
    Pools pools = Pools.of(installations.size(), names);
    List<String> variants = systems.all().map(system -> new CircuitVariant(system, installations, pools).json())
        .toList();
    double hertz = CircuitNetwork.of(systems.base()).hertz();
    Vocabulary words = systems.base().vocabulary();
    var fields = new LinkedHashMap<String, String>();
    fields.put("stages", array(words.controls().entrySet().stream()
        .filter(control -> control.getValue().role() == Vocabulary.Role.STAGE)
        .map(control -> pools.names().of(control.getKey())).toList()));
    fields.put("count", String.valueOf(installations.size()));
    fields.put("rows", string(pools.quantities().rows()));
    fields.put("q", array(pools.quantities().all()));
    fields.put("nodes", String.valueOf(pools.nodes().all().size()));
    fields.put("branches", array(pools.branches().all()));
    fields.put("cases", array(pools.cases().all()));
    fields.put("pieces", array(pools.pieces().all()));
    fields.put("variants", array(variants));
    fields.put("jumper", JsonText.number(1 / BranchMode.JUMPER_OHMS));
    fields.put("omega", JsonText.number(2 * Math.PI * hertz));
    fields.put("dead", JsonText.number(MeterFunction.DEAD_VOLTS));
    fields.put("inputs", inputs(hertz, inputOhms));
    return fields;
  }

  /** The faults of each case, in the order of the cases of a variant: each by itself, then those that come together. */
  public static List<List<Fault>> cases(ControlSystem system) {
    return CircuitVariant.cases(system);
  }

  /** The meter's admittance on volts, at low impedance, and that with which it looks whether a circuit is live. */
  private static String inputs(double hertz, Map<MeterFunction, Double> ohms) {
    return Stream.of(admittance(MeterFunction.VOLTS, hertz, ohms),
        admittance(MeterFunction.VOLTS_LOW_IMPEDANCE, hertz, ohms),
        MeterFunction.VOLTS_LOW_IMPEDANCE.admittance(hertz))
        .map(y -> "[" + JsonText.number(y.re()) + "," + JsonText.number(y.im()) + "]")
        .collect(Collectors.joining(",", "[", "]"));
  }

  private static Phasor admittance(MeterFunction function, double hertz, Map<MeterFunction, Double> ohms) {
    return function.admittance(ohms.getOrDefault(function, function.usualOhms()), hertz);
  }
}
