package rungbook.markdown;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * The {@code key: value} lines of front matter and blocks. Lines are YAML; nearly all are plain scalars and are read
 * here directly, which is several times faster. A block with any other YAML goes to the YAML parser.
 */
final class Lines {

  static final Code KEY_TWICE = Code.of("key-twice");

  /** Characters that can start a YAML value other than a plain scalar. */
  private static final String NOT_PLAIN = "[]{}&*!|>'\"%@`?,#";

  private static final int FEW = 12;

  private final Source source;
  private final Span span;
  private final List<Entry> entries = new ArrayList<>();

  private Lines(Source source, Span span) {
    this.source = source;
    this.span = span;
  }

  /** The entries, and the problems found in them. */
  record Read(List<Entry> entries, List<Problem> problems) {}

  static Read read(Source source, Span span) {
    Read read = readQuickly(source, span).orElseGet(() -> Yaml.read(source, span));
    Optional<Entry> doubled = doubled(read.entries());
    if (doubled.isEmpty()) {
      return read;
    }
    var problems = new ArrayList<>(read.problems());
    problems.add(Problem.at(KEY_TWICE, source, doubled.get().keySpan()).with("key", doubled.get().key()));
    return new Read(read.entries(), problems);
  }

  /** The first entry with a repeated key. Compares few entries pairwise, and many with a set. */
  private static Optional<Entry> doubled(List<Entry> entries) {
    if (entries.size() > FEW) {
      Set<String> seen = new HashSet<>();
      return entries.stream().filter(entry -> !seen.add(entry.key().toLowerCase(Locale.ROOT))).findFirst();
    }
    for (int i = 1; i < entries.size(); i++) {
      for (int before = 0; before < i; before++) {
        if (entries.get(i).is(entries.get(before).key())) {
          return Optional.of(entries.get(i));
        }
      }
    }
    return Optional.empty();
  }

  /** Empty if any line is not plain. */
  static Optional<Read> readQuickly(Source source, Span span) {
    Lines lines = new Lines(source, span);
    return lines.readPlainly() ? Optional.of(new Read(lines.entries, List.of())) : Optional.empty();
  }

  /** False if any line is not plain. */
  private boolean readPlainly() {
    String text = source.text();
    int start = span.start();
    while (start < span.end()) {
      int end = text.indexOf('\n', start);
      end = end < 0 || end > span.end() ? span.end() : end;
      if (!readLine(text, start, trimmedEnd(text, start, end))) {
        return false;
      }
      start = end + 1;
    }
    return true;
  }

  private boolean readLine(String text, int start, int end) {
    if (start == end || text.charAt(start) == '#') {
      return true;
    }
    int colon = start;
    while (colon < end && isKeyLetter(text.charAt(colon))) {
      colon++;
    }
    if (colon == start || colon == end || text.charAt(colon) != ':' || text.charAt(start) == '-'
        || text.charAt(start) == ' ') {
      return false;
    }
    int value = colon + 1;
    while (value < end && text.charAt(value) == ' ') {
      value++;
    }
    if (value < end && (value == colon + 1 || !isPlain(text, value, end))) {
      return false;
    }
    entries.add(new Entry(text.substring(start, colon).strip(), new Span(start, colon), text.substring(value, end),
        new Span(value, end)));
    return true;
  }

  private static boolean isPlain(String text, int start, int end) {
    if (NOT_PLAIN.indexOf(text.charAt(start)) >= 0 || isDash(text, start, end)) {
      return false;
    }
    for (int i = start; i < end; i++) {
      char c = text.charAt(i);
      boolean comment = c == '#' && text.charAt(i - 1) == ' ';
      boolean mapping = c == ':' && (i + 1 == end || text.charAt(i + 1) == ' ');
      if (comment || mapping || isUnusual(c)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDash(String text, int start, int end) {
    return text.charAt(start) == '-' && (start + 1 == end || text.charAt(start + 1) == ' ');
  }

  /** Characters that YAML rejects or treats specially. */
  private static boolean isUnusual(char c) {
    return c < ' ' || (c >= '\u007F' && c <= '\u009F') || (c >= '\uD800' && c <= '\uDFFF') || c == '\uFEFF'
        || c >= '\uFFFE';
  }

  private static boolean isKeyLetter(char c) {
    return Character.isLetterOrDigit(c) || c == ' ' || c == '-' || c == '_';
  }

  private static int trimmedEnd(String text, int start, int end) {
    while (end > start && (text.charAt(end - 1) == ' ' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return end;
  }
}
