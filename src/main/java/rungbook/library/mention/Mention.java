package rungbook.library.mention;

import rungbook.source.Source;
import rungbook.source.Span;

/**
 * A place where a text names a file of the library.
 *
 * @param span the name alone, as written
 * @param path of the file that is named
 */
public record Mention(Source source, Span span, String path) {

  public String written() {
    return source.text(span);
  }
}
