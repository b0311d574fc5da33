package rungbook.system.reader;

import java.util.ArrayList;
import java.util.HashSet;
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
import rungbook.system.Vocabulary.Control;

/**
 * Reads conditions such as {@code thermostat cooling and not low pressure switch open or fan on}. {@code not} binds
 * tighter than {@code and}, {@code and} tighter than {@code or}.
 */
final class ConditionReader {

  static final Code CONDITION_TOO_LONG = Code.of("condition-too-long");
  static final Code UNKNOWN_CONDITION = Code.of("unknown-condition");

  /** In UTF-16 units: longer than any real condition, short enough to evaluate for every fault. */
  private static final int LONGEST = 2_000;

  private final Vocabulary vocabulary;
  private final SystemProblems problems;
  private final ConditionNames names;
  private final Set<String> asked = new HashSet<>();

  ConditionReader(Vocabulary vocabulary, SystemProblems problems, ConditionNames names) {
    this.vocabulary = vocabulary;
    this.problems = problems;
    this.names = names;
  }

  /** The names asked for since this was called last. */
  Set<String> takeAsked() {
    Set<String> taken = new HashSet<>(asked);
    asked.clear();
    return taken;
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
    asked.add(key);
    return selected(key).or(() -> on(key)).or(() -> moved(key)).or(() -> variant(key)).orElseGet(() -> {
      problems.unknown(UNKNOWN_CONDITION, item.span(), text, known());
      return Condition.always();
    });
  }

  private Optional<Condition> selected(String key) {
    for (Map.Entry<String, Control> control : vocabulary.controls().entrySet()) {
      String name = control.getKey();
      if (key.startsWith(name) && key.startsWith(" ", name.length())) {
        String position = key.substring(name.length() + 1);
        if (control.getValue().positions().contains(position)) {
          return Optional.of(new Condition.Selected(name, position));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Condition> on(String key) {
    return names.loads().contains(key) || names.states().contains(key) ? Optional.of(new Condition.On(key))
        : Optional.empty();
  }

  private Optional<Condition> variant(String key) {
    return Optional.of(key).filter(words -> words.startsWith(ConditionNames.VARIANT))
        .map(words -> names.variants().get(words.substring(ConditionNames.VARIANT.length())))
        .map(holds -> holds ? Condition.always() : new Condition.Not(Condition.always()));
  }

  private Optional<Condition> moved(String key) {
    int space = key.lastIndexOf(' ');
    String name = space < 0 ? "" : key.substring(0, space);
    asked.add(name);
    return switch (key.substring(space + 1)) {
      case "on" -> on(name);
      case "humming" -> names.loads().contains(name) ? Optional.of(new Condition.Humming(name)) : Optional.empty();
      case "closed" -> names.switches().contains(name) ? Optional.of(new Condition.Closed(name)) : Optional.empty();
      case "open" ->
          names.switches().contains(name) ? Optional.of(new Condition.Not(new Condition.Closed(name)))
              : Optional.empty();
      default -> Optional.empty();
    };
  }

  private List<String> known() {
    List<String> all = new ArrayList<>();
    vocabulary.controls().values().forEach(c -> c.positions().forEach(p -> all.add(Names.key(c.name()) + " " + p)));
    Stream.concat(names.loads().stream(), names.states().stream()).sorted().forEach(name -> all.add(name + " on"));
    names.switches().stream().sorted().forEach(name -> all.add(name + " closed"));
    names.variants().keySet().stream().sorted().forEach(name -> all.add(ConditionNames.VARIANT + name));
    return all;
  }
}
