package rungbook.system.reader;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.Names;
import rungbook.system.Terminal;
import rungbook.system.TerminalStrip;
import rungbook.system.Vocabulary;

/** Reads a line of {@code strips}: {@code furnace control terminals: at furnace, R, C, W, Y, G}. */
final class StripReader {

  static final Code STRIP_WITHOUT_PLACE = Code.of("strip-without-place");
  static final Code TERMINAL_ON_TWO_STRIPS = Code.of("terminal-on-two-strips");

  private static final String AT = "at ";

  private final Vocabulary vocabulary;
  private final Terminals terminals;
  private final SystemProblems problems;
  private final Map<Terminal, String> taken = new HashMap<>();

  StripReader(Vocabulary vocabulary, Terminals terminals, SystemProblems problems) {
    this.vocabulary = vocabulary;
    this.terminals = terminals;
    this.problems = problems;
  }

  /** The strip, without those of its terminals that are unknown or on another strip; empty without a known place. */
  Optional<TerminalStrip> read(Entry entry) {
    Optional<Entry.Item> at = entry.items().stream().filter(item -> item.text().startsWith(AT)).findFirst();
    String place = at.map(item -> item.text().substring(AT.length()).strip()).orElse("");
    if (!vocabulary.locations().containsKey(Names.key(place))) {
      problems.add(STRIP_WITHOUT_PLACE, at.map(Entry.Item::span).orElse(entry.keySpan()), "name", entry.key(), "places",
          vocabulary.locations().values().stream().map(Vocabulary.Location::name).collect(joining(", ")));
      return Optional.empty();
    }
    List<Terminal> found = new ArrayList<>();
    entry.items().stream().filter(item -> !item.text().startsWith(AT))
        .forEach(item -> terminals.find(item.text() + " at " + place, item.span())
            .filter(terminal -> isFree(terminal, entry.key(), item)).ifPresent(found::add));
    return Optional.of(new TerminalStrip(entry.key(), found));
  }

  private boolean isFree(Terminal terminal, String strip, Entry.Item item) {
    String other = taken.putIfAbsent(terminal, strip);
    if (other != null) {
      problems.add(TERMINAL_ON_TWO_STRIPS, item.span(), "name", item.text(), "strip", other);
    }
    return other == null;
  }
}
