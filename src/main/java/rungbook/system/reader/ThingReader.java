package rungbook.system.reader;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.Names;

/** Reads what a fault outside the circuit is in: {@code in air filter}. */
final class ThingReader {

  static final Code FAULT_IN_TWO_THINGS = Code.of("fault-in-two-things");

  private static final String IN = "in ";

  private final SystemProblems problems;

  ThingReader(SystemProblems problems) {
    this.problems = problems;
  }

  /** Whether the line is worth taking apart: most name no thing. */
  static boolean mayName(Entry entry) {
    return entry.value().contains(IN);
  }

  static boolean isThing(Entry.Item item) {
    return item.text().startsWith(IN);
  }

  /** The thing's name as the text writes it. */
  static String name(Entry.Item item) {
    return item.text().substring(IN.length()).strip();
  }

  /** The key of the first thing that a line names; each other is a problem. */
  Optional<String> read(Entry entry) {
    List<Entry.Item> things = entry.items().stream().filter(ThingReader::isThing).toList();
    things.stream().skip(1).forEach(other -> problems.add(FAULT_IN_TWO_THINGS, other.span(), "first",
        name(things.get(0)), "second", name(other)));
    return things.stream().findFirst().map(thing -> Names.key(name(thing)));
  }
}
