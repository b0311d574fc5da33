package rungbook.rules.wording;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rungbook.source.Span;

/** Values by phrase. Finds the longest phrase at a word in as many steps as that phrase has words. */
final class PhraseTable<T> {

  /** In words; a look at each word of a text costs no more steps than this. */
  static final int LONGEST = 8;

  private final Node<T> root = new Node<>();

  private static final class Node<T> {
    private final Map<String, Node<T>> next = new HashMap<>();
    private @Nullable T value;
  }

  /**
   * A phrase in a text.
   *
   * @param words how many
   */
  record Match<T>(T value, int words, Span span) {}

  /** What phrases have in common that are found alike. */
  static String key(String phrase) {
    return words(phrase).stream().map(WordScanner.Word::key).collect(Collectors.joining(" "));
  }

  /** Adds a phrase unless it is there. Ignores one of no words or too many. */
  void add(String phrase, T value) {
    List<WordScanner.Word> words = words(phrase);
    if (words.isEmpty() || words.size() > LONGEST) {
      return;
    }
    Node<T> node = root;
    for (WordScanner.Word word : words) {
      node = node.next.computeIfAbsent(word.key(), key -> new Node<>());
    }
    node.value = node.value == null ? value : node.value;
  }

  private static List<WordScanner.Word> words(String phrase) {
    return WordScanner.in(phrase, new Span(0, phrase.length()));
  }

  /** The longest phrase that starts at a word. */
  Optional<Match<T>> longestAt(List<WordScanner.Word> words, int first) {
    Match<T> longest = null;
    Node<T> node = root;
    int group = words.get(first).group();
    for (int at = first; at < words.size() && words.get(at).group() == group; at++) {
      node = node.next.get(words.get(at).key());
      if (node == null) {
        break;
      }
      if (node.value != null) {
        longest = new Match<>(node.value, at + 1 - first,
            new Span(words.get(first).span().start(), words.get(at).span().end()));
      }
    }
    return Optional.ofNullable(longest);
  }
}
