package rungbook.text;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What customers say most, as a button: it finds the complaints that have all words of one of its phrases. The words
 * are this project's own choice, after the complaints of the trade; there is no source for them.
 *
 * @param words on the button
 */
public record Symptom(String words, List<String> phrases) {

  public static final List<Symptom> ALL = List.of(
      new Symptom("No cooling", List.of("cold", "cooling", "conditioning", "unit quiet", "unit silent")),
      new Symptom("No heat", List.of("heat", "lights goes out")),
      new Symptom("No air", List.of("no air registers", "no fan")),
      new Symptom("Does not stop", List.of("stop", "keeps running", "keeps heating")),
      new Symptom("Blank or dead", List.of("blank", "nothing")),
      new Symptom("Noise", List.of("buzz", "hum", "click", "noise")));

  /** Which of {@link #ALL} a complaint has, by index. */
  public static List<Integer> in(String complaint) {
    List<SearchWord> said = SearchWord.of(complaint);
    return IntStream.range(0, ALL.size()).filter(index -> ALL.get(index).isIn(said)).boxed().toList();
  }

  private boolean isIn(List<SearchWord> said) {
    return phrases.stream().anyMatch(phrase -> SearchWord.of(phrase).stream().allMatch(word -> word.isIn(said)));
  }
}
