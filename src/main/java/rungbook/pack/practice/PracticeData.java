package rungbook.pack.practice;

import static rungbook.text.JsonText.array;
import static rungbook.text.JsonText.object;
import static rungbook.text.JsonText.string;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.export.CircuitExport;
import rungbook.circuit.export.Interned;
import rungbook.circuit.network.Samples;
import rungbook.proof.plan.ProbePlan;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.text.JsonText;
import rungbook.tree.Meter;
import rungbook.tree.Tree;

/** What the script of a practice page knows: the circuit, the words for it, the trees, and the meter. */
final class PracticeData {

  /** More would only make the page longer: nobody remembers one of so many. */
  private static final int INSTALLATIONS = 24;

  private static final long SEED = 1;

  private final PracticeInput input;
  private final SystemVariants systems;
  private final Vocabulary words;
  private final Interned names = new Interned();
  private final Map<Dial, Meter.Scale> scales = new EnumMap<>(Dial.class);

  PracticeData(PracticeInput input) {
    this.input = input;
    systems = input.systems();
    words = systems.base().vocabulary();
    Arrays.stream(Dial.values()).forEach(dial -> input.meters().stream()
        .flatMap(meter -> meter.scale(dial.quantity()).stream()).findFirst()
        .ifPresent(scale -> scales.put(dial, scale)));
  }

  String json() {
    var fields = new LinkedHashMap<>(
        CircuitExport.fields(systems, Samples.seeded(SEED, INSTALLATIONS), inputOhms(), names));
    fields.put("dials", array(scales.entrySet().stream().map(dial -> dial(dial.getKey(), dial.getValue())).toList()));
    fields.put("counts", String.valueOf(counts()));
    fields.put("places", array(words.locations().keySet().stream().map(this::place).toList()));
    fields.put("walks", walks());
    fields.put("controls", array(words.controls().entrySet().stream()
        .map(control -> control(control.getKey(), control.getValue())).toList()));
    fields.put("sights", array(words.sights().values().stream().map(this::sight).toList()));
    fields.put("live", array(words.points().entrySet().stream()
        .filter(point -> point.getValue().volts().orElse(0) >= Vocabulary.LINE_VOLTS)
        .map(point -> names.of(point.getKey())).toList()));
    fields.put("forms", array(forms()));
    fields.put("assemblies", array(words.assemblies().entrySet().stream().map(one -> array(List.of(
        names.of(one.getKey()), array(one.getValue().stream().sorted().map(names::of).toList())))).toList()));
    fields.put("conditions", array(Stream.of(EquipmentCondition.ISOLATED, EquipmentCondition.BYPASSED,
        EquipmentCondition.DISCONNECTED, EquipmentCondition.OPEN, EquipmentCondition.REPLACED, EquipmentCondition.RESET)
        .map(EquipmentCondition::ordinal).toList()));
    ladders(fields);
    trees(fields);
    fields.put("levels", array(Arrays.stream(Level.values()).map(level -> string(level.words())).toList()));
    fields.put("names", array(names.all().stream().map(JsonText::string).toList()));
    fields.put("shown", object(shown()));
    return object(fields);
  }

  private Map<MeterFunction, Double> inputOhms() {
    var ohms = new EnumMap<MeterFunction, Double>(MeterFunction.class);
    input.meters().stream().findFirst().ifPresent(meter -> Stream.of(Dial.VOLTS, Dial.LOW)
        .forEach(dial -> ProbePlan.meter(dial.quantity())
            .ifPresent(function -> ohms.put(function, ProbePlan.inputOhms(meter, dial.quantity(), function)))));
    return ohms;
  }

  private static String dial(Dial dial, Meter.Scale scale) {
    return array(List.of(string(dial.script()), string(dial.words()), number(scale.digit()), number(scale.high()),
        string(dial.quantity().unit())));
  }

  private static String number(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  /** As many as the display has on AC volts. */
  private long counts() {
    return Optional.ofNullable(scales.get(Dial.VOLTS))
        .map(scale -> scale.high().divideToIntegralValue(scale.digit()).longValue()).orElse(6000L);
  }

  private String place(String key) {
    return array(List.of(names.of(key),
        Objects.requireNonNull(words.locations().get(key)).panel().map(panel -> names.of(Names.key(panel)))
            .orElse(-1)));
  }

  /** Minutes from each place to each, and where the work begins. */
  private String walks() {
    WalkTimes walks = input.walks();
    List<String> places = List.copyOf(words.locations().keySet());
    String start = words.locations().containsKey(walks.start()) ? walks.start() : places.get(0);
    return array(List.of(places.indexOf(start), array(places.stream().map(from -> array(places.stream()
        .map(to -> JsonText.number(walks.minutes(from, to))).toList())).toList())));
  }

  /** Name, role (0 selector, 1 stage, 2 isolator, 3 interlock), positions, places, whether it is a pull-out. */
  private String control(String key, Vocabulary.Control control) {
    return array(List.of(names.of(key), control.role().ordinal(),
        array(control.positions().stream().map(position -> names.of(Names.key(position))).toList()),
        array(control.locations().stream().sorted().map(names::of).toList()), control.isPullOut() ? 1 : 0));
  }

  /** Name, places, and the keys of its values with the words of each. */
  private String sight(Vocabulary.Sight sight) {
    return array(List.of(names.of(sight.key()), array(sight.locations().stream().sorted().map(names::of).toList()),
        array(sight.keys().stream().map(names::of).toList()),
        array(sight.values().stream().map(JsonText::string).toList())));
  }

  /** Each variant: its name, its share, and level and likelihood of each of its cases. */
  private List<String> forms() {
    Stream<String> base = Stream.of(form("", systems.baseShare(), systems.base()));
    return Stream.concat(base, systems.variants().stream()
        .map(variant -> form(variant.name(), variant.share(), variant.system()))).toList();
  }

  private String form(String name, double share, ControlSystem system) {
    List<List<Fault>> cases = CircuitExport.cases(system);
    return array(List.of(string(name), JsonText.number(share), array(cases.stream()
        .map(one -> array(List.of(Level.of(one, system).number(), JsonText.number(one.get(0).likelihood()))))
        .toList())));
  }

  private void ladders(Map<String, String> fields) {
    var ladders = new LadderForm();
    fields.put("ladders", array(systems.all().map(ladders::of).toList()));
    fields.put("rungs", ladders.rungs());
    fields.put("symbols", ladders.symbols());
  }

  private void trees(Map<String, String> fields) {
    var titles = new Interned();
    fields.put("trees", array(input.trees().stream().sorted(Comparator.comparing(Tree::id))
        .filter(tree -> !tree.steps().isEmpty()).map(tree -> new TreeForm(tree, names, titles).json()).toList()));
    fields.put("titles", array(titles.all()));
  }

  /** How keys are written where the text writes them otherwise. */
  private Map<String, String> shown() {
    Map<String, String> written = new LinkedHashMap<>();
    systems.all().map(ControlSystem::vocabulary).forEach(one -> Stream.of(
        one.locations().values().stream().map(Vocabulary.Location::name), one.panels().stream(),
        one.points().values().stream().map(Vocabulary.Point::name),
        one.controls().values().stream().flatMap(c -> Stream.concat(Stream.of(c.name()), c.positions().stream())),
        one.sightNames().stream(), one.parts().values().stream().map(Vocabulary.Part::name),
        one.faults().values().stream()).flatMap(all -> all)
        .forEach(name -> written.putIfAbsent(Names.key(name), name)));
    systems.all().flatMap(system -> system.parts().stream()).flatMap(part -> part.branches().stream())
        .forEach(branch -> written.putIfAbsent(branch.key(), branch.name()));
    Map<String, String> shown = new LinkedHashMap<>();
    List<String> all = names.all();
    for (int i = 0; i < all.size(); i++) {
      String name = written.getOrDefault(all.get(i), all.get(i));
      if (!name.equals(all.get(i))) {
        shown.put(String.valueOf(i), string(name));
      }
    }
    return shown;
  }
}
