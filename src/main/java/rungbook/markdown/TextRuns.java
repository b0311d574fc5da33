package rungbook.markdown;

import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.List;
import rungbook.source.Span;

/**
 * Gathers stretches of plain text. A stretch continues over line breaks of its paragraph, and ends at any markup, so a
 * change inside it changes no markup.
 */
final class TextRuns {

  private static final int NONE = -1;

  private final int shift;
  private final List<Span> found = new ArrayList<>();
  private int start = NONE;
  private int end;

  /** @param shift where the parsed text starts in the source */
  TextRuns(int shift) {
    this.shift = shift;
  }

  /** Grows as nodes are taken. */
  List<Span> found() {
    return found;
  }

  void take(Node node) {
    if (node instanceof Text && !isNameOfReference(node)) {
      start = start == NONE ? node.getStartOffset() : start;
      end = node.getEndOffset();
    } else if (!(node instanceof SoftLineBreak)) {
      end();
    }
  }

  void end() {
    if (start != NONE) {
      found.add(new Span(shift + start, shift + end));
      start = NONE;
    }
  }

  /** The words in brackets may be what a definition elsewhere is found by. */
  private static boolean isNameOfReference(Node text) {
    return text.getParent() instanceof LinkRef || text.getParent() instanceof ImageRef;
  }
}
