package rungbook.markdown;

import java.util.List;
import java.util.Optional;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.TextLimits;

/**
 * A file as it was written, before any name is looked up.
 *
 * @param front the front matter's lines, empty without front matter
 * @param frontSpan where the front matter stands, or the start of the file
 * @param sections the level-2 headings in order, steps and plain chapters alike
 * @param loose blocks before the first level-2 heading (systems and meters keep theirs there)
 * @param pictures every picture in the text
 * @param misspelt the words after a fence that are nearly a step's; a problem names each, and its heading may be meant
 * as a step
 * @param limits what it was held to
 */
public record Document(
    Source source, List<Entry> front, Span frontSpan, List<Section> sections, List<Block> loose, List<Picture> pictures,
    List<Span> misspelt, List<Problem> problems, TextLimits limits) {

  public Document {
    front = List.copyOf(front);
    sections = List.copyOf(sections);
    loose = List.copyOf(loose);
    pictures = List.copyOf(pictures);
    misspelt = List.copyOf(misspelt);
    problems = List.copyOf(problems);
  }

  /** A text that is not read any further, and why. */
  public static Document refused(Source source, Problem why, TextLimits limits) {
    return new Document(source, List.of(), Span.at(0), List.of(), List.of(), List.of(), List.of(), List.of(why),
        limits);
  }

  /** A front matter value by its key. */
  public Optional<Entry> front(String key) {
    return front.stream().filter(entry -> entry.is(key)).findFirst();
  }

  /** Every block of a kind, wherever it stands. */
  public List<Block> blocks(String kind) {
    return java.util.stream.Stream.concat(loose.stream(), sections.stream().flatMap(s -> s.blocks().stream()))
        .filter(block -> block.kind().equals(kind))
        .toList();
  }
}
