package rungbook.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Span;

/** Looks terminals up as a system writes them: {@code coil Y side}, {@code Y at furnace}, {@code inside compressor}. */
final class Terminals {

  static final Code PART_JOINS_ITSELF = Code.of("part-joins-itself");
  static final Code TERMINAL_WITHOUT_PLACE = Code.of("terminal-without-place");
  static final Code UNKNOWN_TERMINAL = Code.of("unknown-terminal");

  private static final String INSIDE = "inside ";

  private final Vocabulary words;
  private final SystemProblems problems;

  Terminals(Vocabulary words, SystemProblems problems) {
    this.words = words;
    this.problems = problems;
  }

  /** Reads {@code A to B}; empty, and reported, if either end is not known. */
  Optional<PartBranch> join(String name, Entry.Item item) {
    int to = item.text().indexOf(" to ");
    String first = item.text().substring(0, to).strip();
    String second = item.text().substring(to + 4).strip();
    Optional<Terminal> a = find(first, item.span());
    Optional<Terminal> b = find(second, item.span());
    return a.flatMap(from -> b.map(till -> limb(name, from, till, item.span())));
  }

  private PartBranch limb(String name, Terminal a, Terminal b, Span span) {
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
    if (!words.points().containsKey(point)) {
      problems.unknown(UNKNOWN_TERMINAL, span, written, pointNames());
      return Optional.empty();
    }
    return at < 0 ? onlyPlace(point, span) : place(point, Names.key(written.substring(at + 4)), span);
  }

  private Optional<Terminal> onlyPlace(String point, Span span) {
    var places = words.points().get(point).locations();
    if (places.size() == 1) {
      return Optional.of(new Terminal(point, places.iterator().next()));
    }
    problems.add(TERMINAL_WITHOUT_PLACE, span, "name", point, "places",
        String.join(", ", places.stream().sorted().toList()));
    return Optional.empty();
  }

  private Optional<Terminal> place(String point, String place, Span span) {
    if (words.points().get(point).locations().contains(place)) {
      return Optional.of(new Terminal(point, place));
    }
    problems.unknown(UNKNOWN_TERMINAL, span, point + " at " + place, everywhere(point));
    return Optional.empty();
  }

  private List<String> pointNames() {
    return words.points().values().stream().map(Vocabulary.Point::name).toList();
  }

  private List<String> everywhere(String point) {
    var all = new ArrayList<String>();
    words.points().get(point).locations().stream().sorted().forEach(place -> all.add(point + " at " + place));
    return all;
  }
}
