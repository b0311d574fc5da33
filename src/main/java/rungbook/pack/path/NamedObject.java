package rungbook.pack.path;

import java.util.List;
import java.util.Set;
import rungbook.text.SearchWord;

/**
 * The object of an action in an author's words: by all of its words, or by the last, {@code the disconnect}, if no
 * other object of the step ends alike. Another word beside the last names another thing: {@code float switch}, {@code
 * contactor coil}.
 */
final class NamedObject {

  private static final int NOWHERE = -1;

  /** Words that may be before a thing and name no other thing. */
  private static final Set<String> DETERMINERS = Set.of("the", "a", "an", "your", "its", "this", "that", "both", "each",
      "every", "all", "and", "new", "old", "same", "of");

  /** Words that may follow a thing and do not make it another thing. */
  private static final Set<String> FOLLOWING = Set.of("and", "or", "on", "off", "in", "out", "back", "to", "at", "from",
      "with", "for", "again", "by", "now", "dead", "too", "first", "itself", "open", "down", "shut", "as", "here",
      "there", "is", "are", "stays", "between", "across", "into", "onto", "over", "against");

  private static final String SWITCH = "switch";

  private final List<String> stems;
  private final boolean byItsLastWord;

  /** @param byItsLastWord whether no other object of the step ends alike */
  NamedObject(String name, boolean byItsLastWord) {
    this.stems = stems(Instructions.words(name));
    this.byItsLastWord = byItsLastWord;
  }

  /** @param words of {@link Instructions} */
  static List<String> stems(List<String> words) {
    return words.stream().map(SearchWord::stem).toList();
  }

  String noun() {
    return stems.get(stems.size() - 1);
  }

  static boolean isDeterminer(String word) {
    return DETERMINERS.contains(word);
  }

  /** Where its name that begins at a word ends; negative if it is not named there. */
  int endAt(List<String> words, int at) {
    if (isAt(words, at, stems)) {
      return ending(words, at + stems.size());
    }
    if (byItsLastWord && isAt(words, at, List.of(noun())) && (at == 0 || isDeterminer(words.get(at - 1)))) {
      return ending(words, at + 1);
    }
    return isSwitched(words, at) ? at + 1 : NOWHERE;
  }

  /** {@code switch the furnace off} is about the furnace switch. */
  private boolean isSwitched(List<String> words, int at) {
    return stems.size() == 2 && noun().equals(SWITCH) && words.get(0).equals(SWITCH)
        && isAt(words, at, stems.subList(0, 1)) && at + 1 < words.size()
        && (words.get(at + 1).equals("off") || words.get(at + 1).equals("on"));
  }

  private static int ending(List<String> words, int end) {
    return end == words.size() || FOLLOWING.contains(words.get(end)) ? end : NOWHERE;
  }

  private static boolean isAt(List<String> words, int at, List<String> stems) {
    if (at + stems.size() > words.size()) {
      return false;
    }
    for (int i = 0; i < stems.size(); i++) {
      if (!SearchWord.stem(words.get(at + i)).equals(stems.get(i))) {
        return false;
      }
    }
    return true;
  }

  boolean isIn(List<String> words) {
    for (int at = 0; at < words.size(); at++) {
      if (endAt(words, at) >= 0) {
        return true;
      }
    }
    return false;
  }
}
