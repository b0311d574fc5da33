package rungbook.markdown;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.TextLimits;

/**
 * A parsed file, before any name is looked up.
 *
 * @param front the front matter's entries; empty if there is none
 * @param frontSpan where the front matter is, or the start of the file
 * @param sections the level-2 headings in order, steps and plain chapters alike
 * @param loose blocks before the first level-2 heading (systems and meters keep theirs there)
 * @param pictures every picture in the text
 * @param runs the plain text of paragraphs, headings, lists, tables and links, in order: no code, no addresses, no
 * HTML. A run ends at any markup, and may go over line breaks
 * @param anchors links to headings of this text
 * @param misspelled words after a fence that almost match a step's kind; each has a problem, and its heading may be
 * meant as a step
 * @param unread problems that left part of the text unread: whatever seems to be missing may be in that part
 * @param remarks problems in text that was still read
 * @param limits the limits it was read under
 */
public record Document(
    Source source, List<Entry> front, Span frontSpan, List<Section> sections, List<Block> loose, List<Picture> pictures,
    List<Span> runs, List<Anchor> anchors, List<Span> misspelled, List<Problem> unread, List<Problem> remarks,
    TextLimits limits) {

  /**
   * The address of a link to a heading of the same text.
   *
   * @param target with its number sign: {@code #measure-coil}
   * @param span the address as written
   */
  public record Anchor(String target, Span span) {}

  public Document {
    front = List.copyOf(front);
    sections = List.copyOf(sections);
    loose = List.copyOf(loose);
    pictures = List.copyOf(pictures);
    runs = List.copyOf(runs);
    anchors = List.copyOf(anchors);
    misspelled = List.copyOf(misspelled);
    unread = List.copyOf(unread);
    remarks = List.copyOf(remarks);
  }

  /** A text that was rejected unread, and why. */
  public static Document refused(Source source, Problem why, TextLimits limits) {
    return new Document(source, List.of(), Span.at(0), List.of(), List.of(), List.of(), List.of(), List.of(),
        List.of(), List.of(why), List.of(), limits);
  }

  /** All problems of the text itself, in no particular order. */
  public List<Problem> problems() {
    return Stream.concat(unread.stream(), remarks.stream()).toList();
  }

  /** The front matter's entry for a key, ignoring case. */
  public Optional<Entry> front(String key) {
    return front.stream().filter(entry -> entry.is(key)).findFirst();
  }

  /** All blocks, in order. */
  public Stream<Block> blocks() {
    return Stream.concat(loose.stream(), sections.stream().flatMap(s -> s.blocks().stream()));
  }

  /** All blocks of a kind, in order. */
  public List<Block> blocks(String kind) {
    return blocks().filter(block -> block.kind().equals(kind)).toList();
  }

  /** The lines of all blocks of a kind, in order. */
  public Stream<Entry> entries(String kind) {
    return blocks(kind).stream().flatMap(block -> block.entries().stream());
  }

  /** The same text with other blocks, which are in no section. */
  public Document with(List<Block> others) {
    return new Document(source, front, frontSpan, List.of(), others, pictures, runs, anchors, misspelled, unread,
        remarks, limits);
  }
}
