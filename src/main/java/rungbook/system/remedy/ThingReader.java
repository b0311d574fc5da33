package rungbook.system.remedy;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.system.Names;

/** Reads what a fault outside the circuit is in, and where it is repaired: {@code in air filter}. */
public final class ThingReader {

  static final Code FAULT_IN_TWO_THINGS = Code.of("fault-in-two-things");

  private static final String IN = "in ";

  private final Source source;
  private final Consumer<Problem> problems;

  public ThingReader(Source source, Consumer<Problem> problems) {
    this.source = source;
    this.problems = problems;
  }

  /** Whether the line is worth taking apart: most name no thing. */
  public static boolean mayName(Entry entry) {
    return entry.value().contains(IN);
  }

  public static boolean isThing(Entry.Item item) {
    return item.text().startsWith(IN);
  }

  /** The thing's name as the text writes it. */
  public static String name(Entry.Item item) {
    return item.text().substring(IN.length()).strip();
  }

  /** The key of the first thing that a line names; each other is a problem. */
  public Optional<String> read(Entry entry) {
    List<Entry.Item> things = entry.items().stream().filter(ThingReader::isThing).toList();
    things.stream().skip(1)
        .forEach(other -> problems.accept(Problem.at(FAULT_IN_TWO_THINGS, source, other.span())
            .with("first", name(things.get(0))).with("second", name(other))));
    return things.stream().findFirst().map(thing -> Names.key(name(thing)));
  }
}
