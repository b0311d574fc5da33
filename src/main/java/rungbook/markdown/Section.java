package rungbook.markdown;

import java.util.List;
import rungbook.source.Span;

/**
 * A level-2 heading and what follows up to the next.
 *
 * @param title the heading's words without emphasis
 * @param slug the heading's id, as links write it; two sections may still share it here
 * @param titleSpan the heading's words
 * @param span the heading's line up to the next level-2 heading
 * @param blocks the fenced blocks of a known kind
 * @param ways the ways on, in order; empty where there is no such list
 */
public record Section(String title, String slug, Span titleSpan, Span span, List<Block> blocks, List<ParsedWay> ways) {

  public Section {
    blocks = List.copyOf(blocks);
    ways = List.copyOf(ways);
  }
}
