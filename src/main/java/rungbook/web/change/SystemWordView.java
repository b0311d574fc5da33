package rungbook.web.change;

import java.util.List;
import rungbook.library.mention.SystemWord;

/**
 * A name that a system gives, and the lines that use it.
 *
 * @param kind in words: {@code part}
 * @param count of the lines
 */
public record SystemWordView(String name, String kind, int count, List<UseView> uses) {

  public static List<SystemWordView> of(List<SystemWord> words) {
    return words.stream().map(SystemWordView::of).toList();
  }

  private static SystemWordView of(SystemWord word) {
    var uses = UseView.of(word.mentions());
    return new SystemWordView(word.name(), word.kind().substring(0, word.kind().length() - 1),
        uses.stream().mapToInt(use -> use.places().size()).sum(), uses);
  }
}
