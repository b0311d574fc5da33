package rungbook.web.views;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import rungbook.proof.demand.ControlChoice;
import rungbook.proof.demand.ReadingRequest;
import rungbook.proof.plan.ProbePlan;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;
import rungbook.system.Vocabulary;
import rungbook.text.English;

/**
 * What somebody chose in the form for a reading. The values are the words of {@code rungbook read}.
 *
 * @param red the point of the red lead with its place; empty for no reading
 */
public record ReadingForm(String red, String black, String quantity, String fault, String variant, String meter,
    List<String> set) {

  public ReadingForm {
    set = List.copyOf(set);
  }

  public ReadingRequest request() {
    String leads = String.join(", ", Stream.of(red, black).filter(lead -> !lead.isBlank()).toList());
    return new ReadingRequest(variant, "", leads, set, fault, quantity);
  }

  public List<CircuitView.Field> fields(SystemVariants systems, Collection<String> meters) {
    ControlSystem system = systems.base();
    List<String> points = points(system.vocabulary());
    var fields = new ArrayList<CircuitView.Field>();
    fields.add(field("red", "Red lead", red, "no reading", points));
    fields.add(field("black", "Black lead", black, "none, for a clamp", points));
    Stream<String> inCircuit = Arrays.stream(Quantity.values())
        .filter(one -> one != Quantity.AC_VOLTS && ProbePlan.meter(one).isPresent()).map(Quantity::words);
    fields.add(field("quantity", "Meter set to", quantity, "AC volts",
        Stream.concat(inCircuit, system.vocabulary().quantityNames().stream()).toList()));
    fields.add(field("fault", "Fault", fault, "none", system.faults().stream().map(Fault::name).toList()));
    if (!systems.variants().isEmpty()) {
      fields.add(field("variant", "Variant", variant, "none", systems.variants().stream().map(Variant::name).toList()));
    }
    fields.add(field("meter", "Meter", meter, "the usual one", List.copyOf(meters)));
    ControlChoice.of(system.vocabulary()).forEach(choice -> fields.add(control(choice)));
    return List.copyOf(fields);
  }

  /** Every point with every place that it has. */
  private static List<String> points(Vocabulary words) {
    return words.points().values().stream().flatMap(point -> point.locations().stream().sorted()
        .map(place -> point.name() + " at " + words.locationName(place))).toList();
  }

  private static CircuitView.Field field(String name, String label, String chosen, String empty,
      List<String> values) {
    var options = new ArrayList<CircuitView.Option>();
    options.add(new CircuitView.Option("", empty, chosen.isBlank()));
    values.forEach(value -> options.add(new CircuitView.Option(value, value, same(value, chosen))));
    return new CircuitView.Field(name, name, label, List.copyOf(options));
  }

  private CircuitView.Field control(ControlChoice choice) {
    return new CircuitView.Field("set-" + choice.key().replace(' ', '-'), "set", English.capital(choice.name()),
        choice.positions().stream().map(position -> new CircuitView.Option(choice.at(position), position,
            set.stream().anyMatch(chosen -> same(choice.at(position), chosen)))).toList());
  }

  private static boolean same(String value, String chosen) {
    return Names.key(value).equals(Names.key(chosen));
  }
}
