package rungbook.markdown;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
 * @param misspelled the words after a fence that are nearly a step's; a problem names each, and its heading may be
 * meant as a step
 * @param unread the problems for which some of the text was not read: what seems to be missing may be in that part
 * @param remarks problems of text that was read nonetheless
 * @param limits the limits it was read under
 */
public record Document(
    Source source, List<Entry> front, Span frontSpan, List<Section> sections, List<Block> loose, List<Picture> pictures,
    List<Span> misspelled, List<Problem> unread, List<Problem> remarks, TextLimits limits) {

  public Document {
    front = List.copyOf(front);
    sections = List.copyOf(sections);
    loose = List.copyOf(loose);
    pictures = List.copyOf(pictures);
    misspelled = List.copyOf(misspelled);
    unread = List.copyOf(unread);
    remarks = List.copyOf(remarks);
  }

  /** A text that is not read any further, and why. */
  public static Document refused(Source source, Problem why, TextLimits limits) {
    return new Document(source, List.of(), Span.at(0), List.of(), List.of(), List.of(), List.of(), List.of(why),
        List.of(), limits);
  }

  /** All problems of the text itself, in no particular order. */
  public List<Problem> problems() {
    return Stream.concat(unread.stream(), remarks.stream()).toList();
  }

  /** A front matter value by its key. */
  public Optional<Entry> front(String key) {
    return front.stream().filter(entry -> entry.is(key)).findFirst();
  }

  /** Every block of a kind, wherever it stands. */
  public List<Block> blocks(String kind) {
    return Stream.concat(loose.stream(), sections.stream().flatMap(s -> s.blocks().stream()))
        .filter(block -> block.kind().equals(kind))
        .toList();
  }
}
