package rungbook.markdown;

import java.util.List;
import rungbook.source.Span;

/**
 * A level-2 heading and everything up to the next one.
 *
 * @param title the heading's words without emphasis
 * @param slug the heading's id, as links write it; not yet checked to be unique
 * @param titleSpan the heading's words
 * @param span from the heading's line to the next level-2 heading
 * @param blocks the fenced blocks of a known kind
 * @param ways the ways on, in order; empty if the section has no such list
 * @param unread items that look like ways on but cannot be read; a problem says why
 */
public record Section(String title, String slug, Span titleSpan, Span span, List<Block> blocks, List<ParsedWay> ways,
    List<Span> unread) {

  public Section {
    blocks = List.copyOf(blocks);
    ways = List.copyOf(ways);
    unread = List.copyOf(unread);
  }

  /** Whether the section has a step's block. */
  public boolean isStep() {
    for (Block block : blocks) {
      if (Kinds.OF_STEPS.contains(block.kind())) {
        return true;
      }
    }
    return false;
  }
}
