package rungbook.tree.reader;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.action.ActionObject;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary;
import rungbook.system.sight.SightLookup;
import rungbook.tree.NameRef;
import rungbook.tree.Setting;

/** Looks up a step's names in the tree's system. A tree without a system may use any names. */
public final class SystemNames {

  public static final Code UNKNOWN_CONTROL = Code.of("unknown-control");
  public static final Code UNKNOWN_FAULT = Code.of("unknown-fault");
  public static final Code UNKNOWN_LOCATION = Code.of("unknown-location");
  public static final Code UNKNOWN_POINT = Code.of("unknown-point");
  public static final Code UNKNOWN_POSITION = Code.of("unknown-position");
  public static final Code UNKNOWN_THING = Code.of("unknown-thing");

  private static final int MOST_LISTED = 20;

  private final Optional<Vocabulary> system;
  private final Source source;
  private final Problems problems;

  public SystemNames(Optional<Vocabulary> system, Source source, Problems problems) {
    this.system = system;
    this.source = source;
    this.problems = problems;
  }

  void location(NameRef name) {
    if (system.isPresent() && !system.get().locations().containsKey(name.key())) {
      refuse(UNKNOWN_LOCATION, "location", name,
          system.get().locations().values().stream().map(Vocabulary.Location::name).toList());
    }
  }

  void point(NameRef name) {
    thing(ActionObject.POINT, name, name.key());
  }

  void fault(NameRef name) {
    if (system.isPresent() && !system.get().faults().containsKey(name.key())) {
      refuse(UNKNOWN_FAULT, "fault", name, system.get().faults().values());
    }
  }

  /** Whether the system has the sight, or the value with its sight; if not, this is reported. */
  boolean sight(NameRef name) {
    Optional<Problem> wrong = system
        .flatMap(known -> SightLookup.inspect(known, name.text(), name.span(), source));
    wrong.ifPresent(problems::add);
    return wrong.isEmpty();
  }

  /** What the system states outside its circuit, by the name that a tree measures. */
  Optional<Vocabulary.StatedQuantity> quantity(String written) {
    return system.flatMap(known -> Optional.ofNullable(known.quantities().get(Names.key(written))));
  }

  /** Everything that can be measured: what a meter measures, and what the system states. */
  public static List<String> measurable(Optional<Vocabulary> system) {
    return Stream.concat(Quantity.allWords().stream(),
        system.stream().flatMap(known -> known.quantityNames().stream())).toList();
  }

  /** The sight with values that a name is one of. */
  Optional<Vocabulary.Sight> sightWithValue(NameRef name) {
    return system.flatMap(known -> known.sight(name.key())).filter(sight -> !sight.values().isEmpty());
  }

  /** Splits {@code thermostat cooling} into control and position. */
  public Optional<Setting> setting(String written, Span span) {
    String key = Names.key(written);
    if (system.isEmpty()) {
      int space = key.lastIndexOf(' ');
      return Optional.of(new Setting(space < 0 ? key : key.substring(0, space), key.substring(space + 1), span));
    }
    Optional<Map.Entry<String, Control>> control = system.get().controls().entrySet().stream()
        .filter(one -> key.startsWith(one.getKey() + " ") && !one.getValue().positions().isEmpty())
        .max(Comparator.comparingInt(one -> one.getKey().length()));
    if (control.isEmpty()) {
      refuse(UNKNOWN_CONTROL, "control", new NameRef(written, span), ActionObject.SETTING.names(system.get()));
      return Optional.empty();
    }
    String controlKey = control.get().getKey();
    Control selector = control.get().getValue();
    String position = key.substring(controlKey.length() + 1);
    if (!selector.positions().contains(position)) {
      refuse(UNKNOWN_POSITION, selector.name(), new NameRef(position, span), selector.positions());
      return Optional.empty();
    }
    return Optional.of(new Setting(controlKey, position, span));
  }

  /** Checks the object of an action. */
  void thing(ActionObject object, NameRef name, String key) {
    if (system.isPresent() && !object.accepts(system.get(), key)) {
      Code code = object == ActionObject.POINT ? UNKNOWN_POINT : UNKNOWN_THING;
      refuse(code, object.words(), name, object.names(system.get()));
    }
  }

  /** Some of the known names: a hundred would bury the message. */
  public static String listed(Collection<String> known) {
    if (known.isEmpty()) {
      return "its names, once it has some";
    }
    String first = known.stream().limit(MOST_LISTED).collect(Collectors.joining(", "));
    return known.size() <= MOST_LISTED ? first : first + " and " + (known.size() - MOST_LISTED) + " more";
  }

  private void refuse(Code code, String kind, NameRef name, Collection<String> known) {
    problems.add(Problem.at(code, source, name.span()).with("name", name.text()).with("kind", kind)
        .with("system", system.map(Vocabulary::id).orElse("")).with("known", listed(known))
        .near(name.text(), Nearest.to(name.text(), known)));
  }
}
