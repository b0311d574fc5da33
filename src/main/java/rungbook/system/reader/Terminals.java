package rungbook.system.reader;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/** Finds terminals by their text: {@code coil Y side}, {@code Y at furnace}, {@code inside compressor}. */
final class Terminals {

  static final Code PART_JOINS_ITSELF = Code.of("part-joins-itself");
  static final Code TERMINAL_WITHOUT_PLACE = Code.of("terminal-without-place");
  static final Code UNKNOWN_TERMINAL = Code.of("unknown-terminal");

  private static final String INSIDE = "inside ";

  private final Vocabulary vocabulary;
  private final SystemProblems problems;

  Terminals(Vocabulary vocabulary, SystemProblems problems) {
    this.vocabulary = vocabulary;
    this.problems = problems;
  }

  /** Reads {@code A to B}; reports an unknown terminal and returns empty. */
  Optional<PartBranch> join(String name, Entry.Item item) {
    int to = item.text().indexOf(" to ");
    String first = item.text().substring(0, to).strip();
    String second = item.text().substring(to + 4).strip();
    Optional<Terminal> a = find(first, item.span());
    Optional<Terminal> b = find(second, item.span());
    return a.flatMap(from -> b.map(till -> branch(name, from, till, item.span())));
  }

  private PartBranch branch(String name, Terminal a, Terminal b, Span span) {
    if (a.equals(b)) {
      problems.add(PART_JOINS_ITSELF, span, "name", name, "terminal", a);
    }
    return new PartBranch(name, a, b);
  }

  Optional<Terminal> find(String written, Span span) {
    if (written.startsWith(INSIDE)) {
      return Optional.of(Terminal.inside(Names.key(written.substring(INSIDE.length()))));
    }
    int at = written.lastIndexOf(" at ");
    String point = Names.key(at < 0 ? written : written.substring(0, at));
    Vocabulary.Point known = vocabulary.points().get(point);
    if (known == null) {
      problems.unknown(UNKNOWN_TERMINAL, span, written, pointNames());
      return Optional.empty();
    }
    Set<String> places = known.locations();
    return at < 0 ? onlyPlace(point, places, span)
        : place(new Terminal(point, Names.key(written.substring(at + 4))), places, span);
  }

  private Optional<Terminal> onlyPlace(String point, Set<String> places, Span span) {
    if (places.size() == 1) {
      return Optional.of(new Terminal(point, places.iterator().next()));
    }
    problems.add(TERMINAL_WITHOUT_PLACE, span, "name", point, "places",
        String.join(", ", places.stream().sorted().toList()));
    return Optional.empty();
  }

  private Optional<Terminal> place(Terminal terminal, Set<String> places, Span span) {
    if (places.contains(terminal.place())) {
      return Optional.of(terminal);
    }
    problems.unknown(UNKNOWN_TERMINAL, span, terminal.point() + " at " + terminal.place(),
        places.stream().sorted().map(place -> terminal.point() + " at " + place).toList());
    return Optional.empty();
  }

  private List<String> pointNames() {
    return vocabulary.points().values().stream().map(Vocabulary.Point::name).toList();
  }
}
