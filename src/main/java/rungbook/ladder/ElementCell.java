package rungbook.ladder;

import java.util.List;
import java.util.stream.Stream;
import rungbook.text.Lettering;

/**
 * The place of an element in a drawing: its name and note above its symbol. All lengths are in pixels at full size.
 *
 * @param node what is under the dot at its right end
 */
record ElementCell(Element element, List<String> name, List<String> note, List<String> node, double width) {

  static final double NAME = 13;
  static final double SMALL = 12;
  static final double LINE = 15;
  /** Bold letters are wider, and so are those of some faces. */
  static final double BOLD = 1.25;
  private static final double FACE = 1.12;
  private static final double NARROWEST = 62;
  private static final double AROUND = 10;
  private static final int MOST_LINES = 6;

  /**
   * @param before the width of the label at its left end that is inside of it
   * @param next the node at its right end, named if {@code isNamed}
   * @param widest its most
   */
  static ElementCell of(Element element, double before, Node next, boolean isNamed, double widest) {
    List<String> name = wrap(element.name(), NAME * BOLD, widest);
    List<String> note = wrap(element.note(), SMALL * FACE, widest);
    List<String> node = isNamed ? label(next, widest) : List.of();
    double words = Math.max(widest(name, NAME * BOLD), widest(note, SMALL * FACE));
    double width = Math.max(words, before + labelWidth(node) / 2) + AROUND;
    return new ElementCell(element, name, note, node, Math.max(NARROWEST, width));
  }

  /** The names of a node, and the joints that make them one in parentheses. */
  static List<String> label(Node node, double widest) {
    return Stream.concat(node.names().stream(), node.joints().stream().map(joint -> "(" + joint + ")"))
        .flatMap(words -> wrap(words, SMALL * FACE, widest).stream()).toList();
  }

  static double labelWidth(List<String> label) {
    return widest(label, SMALL * FACE);
  }

  private static List<String> wrap(String words, double letters, double widest) {
    return Lettering.wrap(words, letters, widest - AROUND, MOST_LINES);
  }

  private static double widest(List<String> lines, double letters) {
    return lines.stream().mapToDouble(line -> Lettering.width(line, letters)).max().orElse(0);
  }

  /** The height of the words above the symbol. */
  double above() {
    return (name.size() + note.size()) * LINE;
  }
}
