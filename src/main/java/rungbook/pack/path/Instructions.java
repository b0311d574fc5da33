package rungbook.pack.path;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import rungbook.text.SearchWord;

/**
 * The instructions in an author's prose: what a person is told to do, whatever happens. A question and what
 * answers it, a condition, an alternative, a negation, and what somebody else does are none.
 */
final class Instructions {

  private static final Set<String> CONDITIONS = Set.of("if", "unless", "when", "where", "once");
  private static final Set<String> ADVERBS = Set.of("then", "first", "now", "also", "next", "again", "and", "finally");
  private static final Set<String> NOT = Set.of("not", "never", "no", "nobody", "cannot", "dont", "neither", "without");
  private static final Set<String> SUBORDINATE = Set.of("until", "before", "if", "unless", "when", "while", "because",
      "that", "so", "as", "after", "where", "whether", "which", "who");

  /** A clause that begins with one of these tells what is, not what to do. */
  private static final Set<String> DESCRIPTION = Set.of("the", "a", "an", "your", "its", "this", "these", "it", "they",
      "both", "each", "every", "you", "one", "some", "somebody", "or", "with", "in", "on", "at", "as", "by");

  private static final Pattern BLOCK = Pattern
      .compile("</?(?:p|li|ul|ol|h\\d|table|tr|td|th|blockquote|pre|div|br)\\b[^>]*>");
  private static final Pattern TAG = Pattern.compile("<[^>]*>");
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?])\\s+");
  private static final Pattern CLAUSE_END = Pattern.compile("[,;:()]");

  private Instructions() {}

  /**
   * An instruction from its verb on.
   *
   * @param words in lower case, without punctuation
   * @param before what is said before it in its sentence and in the one before
   */
  record Instruction(List<String> words, List<String> before) {}

  /** @param html safe HTML */
  static List<Instruction> of(String html) {
    var found = new ArrayList<Instruction>();
    List<String> last = List.of();
    boolean asked = false;
    for (String sentence : split(html)) {
      List<String> words = words(sentence);
      if (!words.isEmpty()) {
        boolean isCondition = sentence.endsWith("?") || CONDITIONS.contains(words.get(0));
        sentence(isCondition || asked ? "" : sentence, last, found);
        asked = sentence.endsWith("?");
        last = words;
      }
    }
    return found;
  }

  private static String[] split(String html) {
    String sentences = TAG.matcher(BLOCK.matcher(html).replaceAll(". ")).replaceAll("");
    return SENTENCE_END.split(sentences);
  }

  /** The words of each sentence, whether or not it is an instruction. */
  static List<List<String>> sentences(String html) {
    return Arrays.stream(split(html)).map(Instructions::words).toList();
  }

  static List<String> words(String text) {
    return SearchWord.of(text).stream().map(SearchWord::word).toList();
  }

  private static void sentence(String sentence, List<String> last, List<Instruction> found) {
    List<String> before = new ArrayList<>(last);
    for (String clause : CLAUSE_END.split(sentence, -1)) {
      List<String> words = words(clause);
      clause(words, before, found);
      before.addAll(words);
    }
  }

  private static void clause(List<String> words, List<String> before, List<Instruction> found) {
    int first = 0;
    while (first < words.size() && ADVERBS.contains(words.get(first))) {
      first++;
    }
    int end = first;
    while (end < words.size() && !SUBORDINATE.contains(words.get(end))) {
      end++;
    }
    List<String> told = words.subList(first, end);
    if (told.isEmpty() || DESCRIPTION.contains(told.get(0)) || told.stream().anyMatch(NOT::contains)) {
      return;
    }
    for (int at = 0; at < told.size(); at++) {
      if (at == 0 || ADVERBS.contains(told.get(at - 1))) {
        var earlier = new ArrayList<>(before);
        earlier.addAll(told.subList(0, at));
        found.add(new Instruction(List.copyOf(told.subList(at, told.size())), List.copyOf(earlier)));
      }
    }
  }
}
