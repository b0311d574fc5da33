package rungbook.tree;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Document;
import rungbook.source.Source;
import rungbook.system.Vocabulary;

/**
 * A tree with its names resolved and its fragments included.
 *
 * @param id the file's name without {@code .md}
 * @param steps in the order of the text, starting with the first step; empty if the text has none
 */
public record Tree(
    String id, String title, String complaint, Document document, Optional<Vocabulary> system, Meter meter,
    List<Step> steps) {

  public Tree {
    steps = List.copyOf(steps);
  }

  public Source source() {
    return document.source();
  }
}
