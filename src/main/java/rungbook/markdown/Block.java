package rungbook.markdown;

import java.util.List;
import java.util.Optional;
import rungbook.source.Span;

/**
 * A fenced block of a known kind, with its entries.
 *
 * @param kind the word after the fence: {@code check}
 * @param kindSpan that word
 * @param span the whole block, fences included
 */
public record Block(String kind, Span kindSpan, Span span, List<Entry> entries) {

  public Block {
    entries = List.copyOf(entries);
  }

  public Optional<Entry> entry(String key) {
    for (Entry entry : entries) {
      if (entry.is(key)) {
        return Optional.of(entry);
      }
    }
    return Optional.empty();
  }
}
