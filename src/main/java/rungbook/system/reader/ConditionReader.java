package rungbook.system.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.Condition;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/**
 * Reads conditions such as {@code thermostat cooling and not low pressure switch open or fan on}. {@code not} binds
 * tighter than {@code and}, {@code and} tighter than {@code or}.
 */
final class ConditionReader {

  static final Code CONDITION_TOO_LONG = Code.of("condition-too-long");
  static final Code UNKNOWN_CONDITION = Code.of("unknown-condition");

  /** In UTF-16 units: longer than any real condition, short enough to evaluate for every fault. */
  private static final int LONGEST = 2_000;

  private static final String VARIANT = "variant ";

  private final Vocabulary vocabulary;
  private final SystemProblems problems;
  private final Set<String> switches;
  private final Set<String> loads;
  private final Set<String> states;
  private final Map<String, Boolean> variants;

  /**
   * @param switches keys of what can be open or closed
   * @param loads keys of what can be on or humming
   * @param states keys of what can only be on
   * @param variants keys of the system's variants, and whether it is read as that one
   */
  ConditionReader(Vocabulary vocabulary, SystemProblems problems, Set<String> switches, Set<String> loads,
      Set<String> states, Map<String, Boolean> variants) {
    this.vocabulary = vocabulary;
    this.problems = problems;
    this.switches = switches;
    this.loads = loads;
    this.states = states;
    this.variants = variants;
  }

  Condition read(Entry.Item item) {
    if (item.text().length() > LONGEST) {
      problems.add(CONDITION_TOO_LONG, item.span(), "most", LONGEST);
      return Condition.always();
    }
    List<Condition> any = new ArrayList<>();
    for (String part : item.text().split(" or ", -1)) {
      any.add(readAll(part, item));
    }
    return any.size() == 1 ? any.get(0) : new Condition.Any(any);
  }

  private Condition readAll(String text, Entry.Item item) {
    List<Condition> all = new ArrayList<>();
    for (String part : text.split(" and ", -1)) {
      all.add(readOne(part.strip(), item));
    }
    return all.size() == 1 ? all.get(0) : new Condition.All(all);
  }

  private Condition readOne(String text, Entry.Item item) {
    String rest = text;
    boolean negated = false;
    while (rest.startsWith("not ")) {
      rest = rest.substring("not ".length()).strip();
      negated = !negated;
    }
    Condition term = term(rest, item);
    return negated ? new Condition.Not(term) : term;
  }

  private Condition term(String text, Entry.Item item) {
    String key = Names.key(text);
    return selected(key).or(() -> on(key)).or(() -> moved(key)).or(() -> variant(key)).orElseGet(() -> {
      problems.unknown(UNKNOWN_CONDITION, item.span(), text, known());
      return Condition.always();
    });
  }

  private Optional<Condition> selected(String key) {
    return vocabulary.controls().values().stream()
        .filter(control -> key.startsWith(Names.key(control.name()) + " "))
        .filter(control -> control.positions().contains(key.substring(control.name().length() + 1)))
        .map(control -> (Condition) new Condition.Selected(Names.key(control.name()),
            key.substring(control.name().length() + 1)))
        .findFirst();
  }

  private Optional<Condition> on(String key) {
    return loads.contains(key) || states.contains(key) ? Optional.of(new Condition.On(key)) : Optional.empty();
  }

  private Optional<Condition> variant(String key) {
    return Optional.of(key).filter(words -> words.startsWith(VARIANT))
        .map(words -> variants.get(words.substring(VARIANT.length())))
        .map(holds -> holds ? Condition.always() : new Condition.Not(Condition.always()));
  }

  private Optional<Condition> moved(String key) {
    int space = key.lastIndexOf(' ');
    String name = space < 0 ? "" : key.substring(0, space);
    return switch (key.substring(space + 1)) {
      case "on" -> on(name);
      case "humming" -> loads.contains(name) ? Optional.of(new Condition.Humming(name)) : Optional.empty();
      case "closed" -> switches.contains(name) ? Optional.of(new Condition.Closed(name)) : Optional.empty();
      case "open" ->
          switches.contains(name) ? Optional.of(new Condition.Not(new Condition.Closed(name))) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private List<String> known() {
    List<String> all = new ArrayList<>();
    vocabulary.controls().values().forEach(c -> c.positions().forEach(p -> all.add(Names.key(c.name()) + " " + p)));
    Stream.concat(loads.stream(), states.stream()).sorted().forEach(name -> all.add(name + " on"));
    switches.stream().sorted().forEach(name -> all.add(name + " closed"));
    variants.keySet().stream().sorted().forEach(name -> all.add(VARIANT + name));
    return all;
  }
}
