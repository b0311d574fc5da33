package rungbook.tree;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Section;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * What every step has.
 *
 * @param id its slug; a fragment's step has the taking step's id before it, {@code make-it-dead--lock-it}
 * @param document the file it stands in, which is the fragment's for a step taken in
 * @param minutes the time it takes, walking not counted
 */
public record StepHeader(
    String id, Document document, Section section, Block block, Optional<NameRef> at, BigDecimal minutes,
    List<NameRef> cautions,
    List<Way> ways) {

  public StepHeader {
    cautions = List.copyOf(cautions);
    ways = List.copyOf(ways);
  }

  public String title() {
    return section.title();
  }

  public Source source() {
    return document.source();
  }

  public Span titleSpan() {
    return section.titleSpan();
  }
}
