package rungbook.system.variant;

import java.util.List;
import rungbook.markdown.Entry;
import rungbook.source.Span;
import rungbook.system.Names;

/**
 * One variant as its text states it.
 *
 * @param span its name in the block {@code variants}
 * @param share of the installations, from 0 to 1
 * @param blocks that change the system for it
 */
public record VariantText(String name, Span span, double share, String about, List<VariantBlock> blocks) {

  public String key() {
    return Names.key(name);
  }

  /** Whether it changes lines of one kind. */
  public boolean changes(String kind) {
    return blocks.stream().anyMatch(block -> block.lines().equals(kind));
  }

  /** Its lines of one kind. */
  public List<Entry> lines(String kind) {
    return blocks.stream().filter(block -> block.lines().equals(kind)).flatMap(VariantBlock::changes).toList();
  }

  /** The lines of one kind that it takes away: parts, faults. */
  public List<Entry.Item> without(String kind) {
    return blocks.stream().filter(block -> block.lines().equals(kind)).flatMap(VariantBlock::without).toList();
  }

  /** Whether a place is in one of its blocks. */
  public boolean has(Span place) {
    return blocks.stream().map(block -> block.block().span())
        .anyMatch(span -> span.start() <= place.start() && place.end() <= span.end());
  }
}
