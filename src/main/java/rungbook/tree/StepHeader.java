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
 * What all kinds of steps have.
 *
 * @param id its slug; in a fragment prefixed with the id of the including step, {@code make-it-dead--lock-it}
 * @param document the file with its text: the fragment for a fragment's step
 * @param minutes the time it takes, without walking
 * @param timer the time that somebody keeps with a clock, part of the minutes
 * @param who what the person who does it must hold, all of it
 */
public record StepHeader(
    String id, Document document, Section section, Block block, Optional<NameRef> at, BigDecimal minutes,
    Optional<StepTimer> timer, List<NameRef> cautions, List<Qualification> who,
    List<Way> ways) {

  public StepHeader {
    cautions = List.copyOf(cautions);
    who = List.copyOf(who);
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
