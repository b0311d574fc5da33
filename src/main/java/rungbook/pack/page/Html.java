package rungbook.pack.page;

import org.jspecify.annotations.Nullable;
import rungbook.text.Markup;

/** Writes HTML. Whatever goes through {@link #text} or an attribute is escaped; only {@link #raw} is not. */
public final class Html {

  private final StringBuilder out = new StringBuilder();

  /** @param attributes name and value in turn; a null value leaves the attribute out, an empty one is written bare */
  public Html open(String tag, @Nullable String... attributes) {
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      attribute(attributes[i], attributes[i + 1]);
    }
    out.append('>');
    return this;
  }

  private void attribute(String name, @Nullable String value) {
    if (value != null) {
      out.append(' ').append(name);
      if (!value.isEmpty()) {
        out.append("=\"").append(Markup.escape(value)).append('"');
      }
    }
  }

  public Html close(String tag) {
    out.append("</").append(tag).append('>');
    return this;
  }

  /** Ends a line of the file, where white space does not show. */
  public Html line() {
    out.append('\n');
    return this;
  }

  public Html text(String text) {
    out.append(Markup.escape(text));
    return this;
  }

  public Html element(String tag, String text, @Nullable String... attributes) {
    return open(tag, attributes).text(text).close(tag);
  }

  /** @param html already safe */
  public Html raw(String html) {
    out.append(html);
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
