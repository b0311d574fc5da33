package rungbook.markdown;

import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * What a text has besides its blocks.
 *
 * @param runs stretches of plain text, see {@link Document}
 * @param anchors links to headings of the same text
 * @param problems HTML that will be displayed as text, and pictures that are not shown
 */
record Inlines(List<Picture> pictures, List<Span> runs, List<Document.Anchor> anchors, List<Problem> problems) {

  static final Code HTML_SHOWN_AS_TEXT = Code.of("html-shown-as-text");
  static final Code PICTURE_BY_REFERENCE = Code.of("picture-by-reference");

  static Inlines of(Node root, Source source, int shift) {
    var runs = new TextRuns(shift);
    var found = new Inlines(new ArrayList<>(), runs.found(), new ArrayList<>(), new ArrayList<>());
    found.look(root, source, shift, runs);
    return found;
  }

  private void look(Node node, Source source, int shift, TextRuns runs) {
    for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
      runs.take(child);
      take(child, source, shift);
      if (child.getFirstChild() != null && !isLiteral(child)) {
        look(child, source, shift, runs);
      }
    }
    runs.end();
  }

  private void take(Node node, Source source, int shift) {
    if (node instanceof Image image) {
      pictures.add(new Picture(image.getUrl().unescape(), words(image), span(node, shift)));
    } else if (node instanceof ImageRef ref) {
      problems.add(Problem.at(PICTURE_BY_REFERENCE, source, span(ref, shift)));
    } else if (node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
      problems.add(Problem.at(HTML_SHOWN_AS_TEXT, source, span(node, shift)));
    } else if (node instanceof LinkNodeBase link && link.getUrl().startsWith("#")) {
      anchors.add(new Document.Anchor(unescaped(link.getUrl(), source, shift),
          new Span(shift + link.getUrl().getStartOffset(), shift + link.getUrl().getEndOffset())));
    }
  }

  /** Code is shown as it is written, so its text is nothing to read. */
  private static boolean isLiteral(Node node) {
    return node instanceof com.vladsch.flexmark.ast.Code || node instanceof FencedCodeBlock;
  }

  private static Span span(Node node, int shift) {
    return new Span(shift + node.getStartOffset(), shift + node.getStartOffset() + node.getChars().trimEnd().length());
  }

  /**
   * Like {@link #words(Node)}, but faster for a node that is mostly plain text.
   *
   * @param shift where the parsed text starts in the source
   */
  static String words(Node node, Source source, int shift) {
    Node only = node.getFirstChild();
    return only instanceof Text && only.getNext() == null ? unescaped(only.getChars(), source, shift) : words(node);
  }

  /** The text of part of a line, with escapes resolved. */
  static String unescaped(BasedSequence chars, Source source, int shift) {
    String written = source.text().substring(shift + chars.getStartOffset(), shift + chars.getEndOffset());
    return written.indexOf('\\') < 0 && written.indexOf('&') < 0 ? written : chars.unescape();
  }

  /** A node's text without markup. */
  static String words(Node node) {
    var words = new StringBuilder();
    gather(node, words);
    return words.toString().strip();
  }

  private static void gather(Node node, StringBuilder words) {
    for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
      if (child instanceof Text || child instanceof HtmlEntity) {
        words.append(child.getChars().unescape());
      } else if (child instanceof com.vladsch.flexmark.ast.Code code) {
        words.append(code.getText());
      } else if (child instanceof SoftLineBreak || child instanceof HardLineBreak) {
        words.append(' ');
      } else {
        gather(child, words);
      }
    }
  }
}
