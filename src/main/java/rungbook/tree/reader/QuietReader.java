package rungbook.tree.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.markdown.Kinds;
import rungbook.markdown.Section;
import rungbook.source.Code;
import rungbook.source.Codes;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Quiet;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Wording;

/**
 * Reads the {@code quiet:} lines of a text. A step's line counts in that step, from its heading to the next. The line
 * of the front matter counts wherever there is no step.
 */
public final class QuietReader {

  static final Code QUIET_ERROR = Code.of("quiet-error");
  static final Code QUIET_WITHOUT_REASON = Code.of("quiet-without-reason");
  static final Code UNKNOWN_CODE = Code.of("unknown-code");

  static final String KEY = "quiet";
  private static final String BECAUSE = "because";

  /** Comparing every unknown name with every code would take seconds in a text full of slips. */
  private static final int MOST_SUGGESTIONS = 20;

  private final Document document;
  private final Source source;
  private final List<Quiet> quiets = new ArrayList<>(0);
  private final List<Problem> problems = new ArrayList<>(0);
  private int unknown;

  private QuietReader(Document document) {
    this.document = document;
    this.source = document.source();
  }

  /** What a text silences, and what is wrong with the lines that say so. */
  public record Read(List<Quiet> quiets, List<Problem> problems) {

    /** Whether the text has no such line. */
    public boolean isEmpty() {
      return quiets.isEmpty() && problems.isEmpty();
    }
  }

  public static Read read(Document document) {
    var reader = new QuietReader(document);
    document.front(KEY).ifPresent(entry -> reader.read(entry, reader.outsideSteps()));
    for (Section section : document.sections()) {
      for (Block block : section.blocks()) {
        if (Kinds.OF_STEPS.contains(block.kind())) {
          block.entry(KEY).ifPresent(entry -> reader.read(entry, List.of(section.span())));
        }
      }
    }
    return new Read(reader.quiets, reader.problems);
  }

  private List<Span> outsideSteps() {
    var outside = new ArrayList<Span>();
    int from = 0;
    for (Section section : document.sections()) {
      if (section.isStep()) {
        outside.add(new Span(from, section.span().start()));
        from = section.span().end();
      }
    }
    outside.add(new Span(from, source.text().length()));
    outside.removeIf(span -> span.length() == 0);
    return outside;
  }

  private void read(Entry entry, List<Span> within) {
    int because = because(entry.value());
    String head = entry.value().substring(0, because).strip();
    String codes = head.endsWith(",") ? head.substring(0, head.length() - 1) : head;
    String reason = entry.value().substring(Math.min(because + BECAUSE.length(), entry.value().length())).strip();
    if (reason.isEmpty() && !entry.value().isEmpty()) {
      problems.add(Problem.at(QUIET_WITHOUT_REASON, source, entry.valueSpan()).with("codes", codes));
    }
    List<Entry.Item> items = new Entry(entry.key(), entry.keySpan(), codes, beginning(entry, codes)).items();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < items.size(); i++) {
      Entry.Item item = items.get(i);
      if (item.text().isEmpty() && !reason.isEmpty()) {
        problems.add(Problem.at(StepParts.ITEM_EMPTY, source, entry.valueSpan()).with("key", entry.key()));
      } else if (!item.text().isEmpty() && seen.add(item.text().toLowerCase(Locale.ROOT))) {
        read(item, reason, within, removal(entry, items, i));
      }
    }
  }

  private void read(Entry.Item item, String reason, List<Span> within, Optional<Fix> removal) {
    String name = item.text().toLowerCase(Locale.ROOT);
    if (Wording.find(name).isEmpty()) { // finds one page, where a list of all would look through the whole program
      problems.add(Problem.at(UNKNOWN_CODE, source, item.span()).with("code", item.text()).near(item.text(),
          ++unknown > MOST_SUGGESTIONS ? Optional.empty() : Nearest.to(name, Codes.all())));
    } else if (!Codes.isSilenceable(name)) {
      problems.add(Problem.at(QUIET_ERROR, source, item.span()).with("code", name).fixedBy(removal));
    } else if (!reason.isEmpty()) {
      quiets.add(new Quiet(Code.of(name), source, item.span(), reason, within, removal));
    }
  }

  /** Where the word `because` starts, between blanks and commas; the value's length without it. */
  private static int because(String value) {
    for (int at = value.indexOf(BECAUSE); at >= 0; at = value.indexOf(BECAUSE, at + 1)) {
      int end = at + BECAUSE.length();
      boolean starts = at == 0 || value.charAt(at - 1) == ',' || Character.isWhitespace(value.charAt(at - 1));
      if (starts && (end == value.length() || Character.isWhitespace(value.charAt(end)))) {
        return at;
      }
    }
    return value.length();
  }

  /** Where a value's beginning is written; a value in quotes has only one place. */
  private static Span beginning(Entry entry, String codes) {
    return isPlain(entry) ? entry.valueSpan().part(0, codes.length()) : entry.valueSpan();
  }

  private static boolean isPlain(Entry entry) {
    return entry.valueSpan().length() == entry.value().length();
  }

  /** Takes a code and its comma out, or the whole line with its only code. */
  private Optional<Fix> removal(Entry entry, List<Entry.Item> items, int number) {
    Optional<Span> span = !isPlain(entry) ? Optional.empty()
        : items.size() == 1 ? wholeLine(entry)
            : Optional.of(number == 0 ? new Span(items.get(0).span().start(), items.get(1).span().start())
                : new Span(items.get(number - 1).span().end(), items.get(number).span().end()));
    return span.map(place -> new Fix("take `" + items.get(number).text() + "` out",
        List.of(new Edit(source, place, ""))));
  }

  /** Empty where more than the entry is in its line. */
  private Optional<Span> wholeLine(Entry entry) {
    Span line = source.lineSpan(source.placeAt(entry.keySpan().start()).line());
    String text = source.text();
    boolean alone = line.start() == entry.keySpan().start() && line.end() >= entry.valueSpan().end()
        && text.substring(entry.valueSpan().end(), line.end()).isBlank();
    int next = text.startsWith("\r\n", line.end()) ? line.end() + 2 : Math.min(line.end() + 1, text.length());
    return alone ? Optional.of(new Span(line.start(), next)) : Optional.empty();
  }
}
