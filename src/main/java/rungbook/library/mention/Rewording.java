package rungbook.library.mention;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.library.LibraryText;
import rungbook.source.Edit;
import rungbook.source.Source;
import rungbook.source.Span;

/** Writes other words wherever a text of a library has certain words. */
public final class Rewording {

  private Rewording() {}

  /**
   * @param words as written, in upper and lower case; never part of a longer word; not empty
   * @param others what to write instead
   */
  public static LibraryEdit of(String words, String others, LibraryText text) {
    List<Edit> edits = words.equals(others) ? List.of()
        : text.texts().values().stream().flatMap(source -> places(words, source).stream()
            .map(span -> new Edit(source, span, others))).toList();
    return LibraryEdit.of(edits, Optional.empty());
  }

  private static List<Span> places(String words, Source source) {
    List<Span> places = new ArrayList<>();
    String text = source.text();
    for (int at = text.indexOf(words); at >= 0;) {
      boolean isWhole = isApart(text, at) && isApart(text, at + words.length());
      if (isWhole) {
        places.add(Span.at(at).part(0, words.length()));
      }
      at = text.indexOf(words, at + (isWhole ? words.length() : 1));
    }
    return places;
  }

  /** Whether no word goes on over a place. */
  private static boolean isApart(String text, int at) {
    return at == 0 || at == text.length() || !Character.isLetterOrDigit(text.codePointBefore(at))
        || !Character.isLetterOrDigit(text.codePointAt(at));
  }
}
