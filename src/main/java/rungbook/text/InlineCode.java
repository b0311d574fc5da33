package rungbook.text;

import java.util.ArrayList;
import java.util.List;

/** Takes a sentence with words in backticks apart, so that a page can set them as code. */
public final class InlineCode {
  private InlineCode() {}

  /** A stretch of the sentence; {@code code} when it stood in backticks. */
  public record Part(String text, boolean code) {}

  public static List<Part> parts(String sentence) {
    var parts = new ArrayList<Part>();
    var pieces = sentence.split("`", -1);
    for (var i = 0; i < pieces.length; i++) {
      if (!pieces[i].isEmpty()) {
        parts.add(new Part(pieces[i], i % 2 == 1));
      }
    }
    return parts;
  }
}
