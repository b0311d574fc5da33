package rungbook.source;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A change to the text that removes a problem, ready to be made.
 *
 * @param label what the change does, for people: {@code write `measure-coil`}
 * @param edits at least one; they do not overlap
 */
public record Fix(String label, List<Edit> edits) {

  public Fix {
    edits = List.copyOf(edits);
  }

  /**
   * Writes another name in the place of one that nothing has. The name is looked for in the span, which may hold more
   * than it, such as quotes or a control's name; empty if it is not there letter by letter.
   */
  static Optional<Fix> rename(Source source, Span span, String written, String name) {
    int at = source.text(span).toLowerCase(Locale.ROOT).lastIndexOf(written.toLowerCase(Locale.ROOT));
    return at < 0 || written.isEmpty() ? Optional.empty()
        : Optional
            .of(new Fix("write `" + name + "`", List.of(new Edit(source, span.part(at, written.length()), name))));
  }

  /** A text with edits made that lie in it and do not overlap. */
  public static String apply(String text, List<Edit> edits) {
    var changed = new StringBuilder(text);
    edits.stream().sorted(Comparator.comparing(Edit::span).reversed())
        .forEach(edit -> changed.replace(edit.span().start(), edit.span().end(), edit.replacement()));
    return changed.toString();
  }
}
