package rungbook.tree.reader;

import java.util.Optional;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Caution;
import rungbook.tree.SignalWord;

/** Reads a caution's text: signal word, hazard with its consequence, and how to avoid it. */
public final class CautionReader {

  static final Code CAUTION_LEVEL = Code.of("caution-level");
  static final Code CAUTION_LINE_MISSING = Code.of("caution-line-missing");
  static final Code CAUTION_LINE_TOO_LONG = Code.of("caution-line-too-long");

  /** In characters: about two rows on a phone 360 pixels wide. */
  static final int LONGEST_LINE = 72;

  private final Document document;
  private final Problems problems;

  private CautionReader(Document document, Problems problems) {
    this.document = document;
    this.problems = problems;
  }

  /** @param id the file's name without {@code .md} */
  public static Caution read(String id, Document document, Problems problems) {
    return new CautionReader(document, problems).read(id);
  }

  private Caution read(String id) {
    String title = document.front("title").map(Entry::value).orElse(id);
    return new Caution(id, title, level(), line("hazard"), line("avoid"), document);
  }

  private SignalWord level() {
    String level = document.front("level").map(Entry::value).orElse("");
    Optional<SignalWord> signal = SignalWord.of(level);
    if (signal.isEmpty()) {
      Span span = document.front("level").map(Entry::valueSpan).orElse(document.frontSpan());
      problems.add(Problem.at(CAUTION_LEVEL, document.source(), span).with("level", level).near(level,
          Nearest.to(level, SignalWord.words())));
    }
    return signal.orElse(SignalWord.WARNING); // too much care does no harm
  }

  private String line(String key) {
    Optional<Entry> entry = document.front(key);
    String line = entry.map(Entry::value).orElse("");
    if (line.isEmpty() && document.unread().isEmpty()) {
      Span span = entry.map(Entry::keySpan).orElse(document.frontSpan());
      problems.add(Problem.at(CAUTION_LINE_MISSING, document.source(), span).with("key", key));
    }
    int length = line.codePointCount(0, line.length());
    if (length > LONGEST_LINE) {
      problems.add(Problem.at(CAUTION_LINE_TOO_LONG, document.source(), entry.orElseThrow().valueSpan())
          .with("key", key).with("length", length).with("most", LONGEST_LINE));
    }
    return line;
  }
}
