package rungbook.source;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A change to the text that removes a problem, ready to apply.
 *
 * @param label what the change does, for display: {@code write `measure-coil`}
 * @param edits at least one; they do not overlap
 */
public record Fix(String label, List<Edit> edits) {

  public Fix {
    edits = List.copyOf(edits);
  }

  /**
   * Replaces an unknown name with a known one. The span may contain more than the name, such as quotes or a control's
   * name. Empty if the span does not contain the name literally.
   */
  static Optional<Fix> rename(Source source, Span span, String written, String name) {
    int at = source.text(span).toLowerCase(Locale.ROOT).lastIndexOf(written.toLowerCase(Locale.ROOT));
    return at < 0 || written.isEmpty() ? Optional.empty()
        : Optional
            .of(new Fix("write `" + name + "`", List.of(new Edit(source, span.part(at, written.length()), name))));
  }

  /** Applies edits to a text. The edits must lie within it and must not overlap. */
  public static String apply(String text, List<Edit> edits) {
    var changed = new StringBuilder(text);
    edits.stream().sorted(Comparator.comparing(Edit::span).reversed())
        .forEach(edit -> changed.replace(edit.span().start(), edit.span().end(), edit.replacement()));
    return changed.toString();
  }
}
