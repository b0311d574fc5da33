package rungbook.rules.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.source.Span;

/** The words that a library avoids. */
public final class WordList {

  /** Empty for what may be written: the words to use, which may contain one to avoid. */
  private final PhraseTable<Optional<AvoidedWord>> table = new PhraseTable<>();
  private final boolean isEmpty;

  /** @param words none twice */
  public WordList(List<AvoidedWord> words) {
    words.forEach(word -> table.add(word.words(), Optional.of(word)));
    words.forEach(word -> word.uses().forEach(use -> table.add(use, Optional.empty())));
    isEmpty = words.isEmpty();
  }

  /** A word to avoid, in a text. */
  record Found(AvoidedWord word, Span span) {}

  boolean isEmpty() {
    return isEmpty;
  }

  /**
   * The words to avoid in a part of a text, in order; none overlaps another. Where phrases overlap, the first counts,
   * and of those that start together the longest.
   *
   * @param names what may be written because it is called so
   */
  List<Found> in(String text, Span span, PhraseTable<String> names) {
    var found = new ArrayList<Found>(0);
    List<WordScanner.Word> words = WordScanner.in(text, span);
    int at = 0;
    while (at < words.size()) {
      int named = names.longestAt(words, at).map(PhraseTable.Match::words).orElse(0);
      Optional<PhraseTable.Match<Optional<AvoidedWord>>> match = table.longestAt(words, at)
          .filter(one -> one.words() > named);
      match.ifPresent(one -> one.value().ifPresent(word -> found.add(new Found(word, one.span()))));
      at += Math.max(1, match.map(PhraseTable.Match::words).orElse(named));
    }
    return found;
  }
}
