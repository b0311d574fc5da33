package rungbook.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Entry;
import rungbook.source.Code;

/**
 * Reads {@code thermostat cooling and not low pressure switch open or fan on}: {@code not} binds tighter than
 * {@code and}, {@code and} tighter than {@code or}.
 */
final class ConditionReader {

  static final Code CONDITION_TOO_LONG = Code.of("condition-too-long");
  static final Code UNKNOWN_CONDITION = Code.of("unknown-condition");

  /** In UTF-16 units: more than any contact's condition needs, and few enough terms for every fault to be looked at. */
  private static final int LONGEST = 2_000;

  private final Vocabulary words;
  private final SystemProblems problems;
  private final Set<String> switches;
  private final Set<String> consumers;

  /**
   * @param switches keys of what can be open or closed
   * @param consumers keys of what can be on: loads and states
   */
  ConditionReader(Vocabulary words, SystemProblems problems, Set<String> switches, Set<String> consumers) {
    this.words = words;
    this.problems = problems;
    this.switches = switches;
    this.consumers = consumers;
  }

  Condition read(Entry.Item item) {
    if (item.text().length() > LONGEST) {
      problems.add(CONDITION_TOO_LONG, item.span(), "most", LONGEST);
      return Condition.ALWAYS;
    }
    List<Condition> any = new ArrayList<>();
    for (String part : item.text().split(" or ")) {
      any.add(readAll(part, item));
    }
    return any.size() == 1 ? any.get(0) : new Condition.Any(any);
  }

  private Condition readAll(String text, Entry.Item item) {
    List<Condition> all = new ArrayList<>();
    for (String part : text.split(" and ")) {
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
    return stands(key).or(() -> bare(key)).or(() -> moved(key)).orElseGet(() -> {
      problems.unknown(UNKNOWN_CONDITION, item.span(), text, known());
      return Condition.ALWAYS;
    });
  }

  private Optional<Condition> stands(String key) {
    return words.controls().values().stream()
        .filter(control -> key.startsWith(Names.key(control.name()) + " "))
        .filter(control -> control.positions().contains(key.substring(control.name().length() + 1)))
        .map(control -> (Condition) new Condition.Stands(Names.key(control.name()),
            key.substring(control.name().length() + 1)))
        .findFirst();
  }

  private Optional<Condition> bare(String key) {
    return consumers.contains(key) ? Optional.of(new Condition.On(key)) : Optional.empty();
  }

  private Optional<Condition> moved(String key) {
    int space = key.lastIndexOf(' ');
    String name = space < 0 ? "" : key.substring(0, space);
    return switch (key.substring(space + 1)) {
      case "on" -> consumers.contains(name) ? Optional.of(new Condition.On(name)) : Optional.empty();
      case "humming" -> consumers.contains(name) ? Optional.of(new Condition.Humming(name)) : Optional.empty();
      case "closed" -> switches.contains(name) ? Optional.of(new Condition.Closed(name)) : Optional.empty();
      case "open" ->
          switches.contains(name) ? Optional.of(new Condition.Not(new Condition.Closed(name))) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private List<String> known() {
    List<String> all = new ArrayList<>();
    words.controls().values().forEach(c -> c.positions().forEach(p -> all.add(Names.key(c.name()) + " " + p)));
    consumers.stream().sorted().forEach(name -> all.add(name + " on"));
    switches.stream().sorted().forEach(name -> all.add(name + " closed"));
    return all;
  }
}
