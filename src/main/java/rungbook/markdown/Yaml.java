package rungbook.markdown;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * Reads lines that use more of YAML than plain scalars: quotes, folded text, lists. Works on the parser's events: it
 * builds no objects and expands no alias. Every scalar is text, whatever it looks like.
 */
final class Yaml {

  static final Code LINE_NOT_PLAIN = Code.of("line-not-plain");
  static final Code NOT_YAML = Code.of("not-yaml");

  private final Source source;
  private final Span span;
  private final List<Entry> entries = new ArrayList<>();
  private final Problems problems = new Problems();
  private static final int MOST_BRACKETS = 1_000;

  private int codePoints;
  private int offset;

  private Yaml(Source source, Span span) {
    this.source = source;
    this.span = span;
    this.offset = span.start();
  }

  static Lines.Read read(Source source, Span span) {
    Yaml yaml = new Yaml(source, span);
    yaml.read();
    return new Lines.Read(yaml.entries, yaml.problems.all());
  }

  /** Nesting is not allowed here, and the library's time grows with the square of the number of open brackets. */
  private boolean hasManyBrackets() {
    return source.text(span).chars().filter(c -> c == '[' || c == '{').count() > MOST_BRACKETS;
  }

  private void read() {
    if (hasManyBrackets()) {
      problems.add(Problem.at(LINE_NOT_PLAIN, source, span));
      return;
    }
    var settings = LoadSettings.builder().setUseMarks(true).build();
    try {
      readDocument(new Parse(settings).parseString(source.text(span)).iterator());
    } catch (MarkedYamlEngineException e) {
      int at = e.getProblemMark().map(this::offset).orElse(span.start());
      problems.add(Problem.at(NOT_YAML, source, Span.at(at)).with("why", e.getProblem()));
    } catch (YamlEngineException e) {
      problems.add(Problem.at(NOT_YAML, source, span).with("why", "a character that is not allowed here"));
    }
  }

  private void readDocument(Iterator<Event> events) {
    while (events.hasNext()) {
      Event event = events.next();
      switch (event.getEventId()) {
        case StreamStart, StreamEnd, DocumentStart, DocumentEnd, Comment -> {}
        case MappingStart -> readMapping(events);
        default -> {
          refuse(event);
          return;
        }
      }
    }
  }

  private void readMapping(Iterator<Event> events) {
    for (Event event = events.next(); event.getEventId() != Event.ID.MappingEnd; event = events.next()) {
      if (!(event instanceof ScalarEvent key) || !readValue(key, events)) {
        refuse(event);
        while (events.hasNext()) {
          events.next(); // the rest has no sure meaning, but its syntax is still looked at
        }
        return;
      }
    }
  }

  private boolean readValue(ScalarEvent key, Iterator<Event> events) {
    Event value = events.next();
    if (value instanceof ScalarEvent scalar) {
      add(key, scalar.getValue(), spanOf(scalar));
      return true;
    }
    return value.getEventId() == Event.ID.SequenceStart && readList(key, value, events);
  }

  private boolean readList(ScalarEvent key, Event start, Iterator<Event> events) {
    var items = new ArrayList<String>();
    Event event = events.next();
    for (; event instanceof ScalarEvent scalar; event = events.next()) {
      items.add(scalar.getValue());
    }
    add(key, String.join(", ", items),
        new Span(offset(start.getStartMark().orElseThrow()), offset(event.getEndMark().orElseThrow())));
    return event.getEventId() == Event.ID.SequenceEnd;
  }

  private void add(ScalarEvent key, String value, Span valueSpan) {
    entries.add(new Entry(key.getValue().strip(), spanOf(key), value.strip(), valueSpan));
  }

  private void refuse(Event event) {
    problems.add(Problem.at(LINE_NOT_PLAIN, source, spanOf(event)));
  }

  private Span spanOf(Event event) {
    int start = offset(event.getStartMark().orElseThrow());
    return new Span(start, Math.max(start, offset(event.getEndMark().orElseThrow())));
  }

  /**
   * Converts code points, which the parser counts, to UTF-16 units. Continues from the previous mark, which is nearly
   * always close.
   */
  private int offset(Mark mark) {
    while (codePoints < mark.getIndex() && offset < span.end()) {
      offset = source.text().offsetByCodePoints(offset, 1);
      codePoints++;
    }
    while (codePoints > mark.getIndex()) {
      offset = source.text().offsetByCodePoints(offset, -1);
      codePoints--;
    }
    return offset;
  }
}
