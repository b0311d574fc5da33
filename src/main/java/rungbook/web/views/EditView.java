package rungbook.web.views;

import java.util.List;
import rungbook.source.Fix;

/** What is from one offset to the other is to read otherwise; offsets in the text, in UTF-16 units. */
public record EditView(int from, int to, String text) {

  public static List<EditView> of(Fix fix) {
    return fix.edits().stream().map(edit -> new EditView(edit.span().start(), edit.span().end(), edit.replacement()))
        .toList();
  }
}
