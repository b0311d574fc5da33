package rungbook.text;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What customers say where a title or a complaint says something else. The words are this project's own choice, after
 * the complaints of the trade; there is no source for them.
 *
 * @param said the customer's words
 * @param meant phrases of titles and complaints; one of them must be there with all of its words
 */
record Synonyms(String said, List<String> meant) {

  private static final List<Synonyms> ALL = List.of(
      new Synonyms("no not never isnt doesnt dont wont cant stopped quit",
          List.of("no", "not", "won't", "nothing", "never")),
      new Synonyms("work start run come kick turn spin operate dead broken down nothing respond power",
          List.of("won't run", "won't start", "nothing", "quiet", "silent")),
      new Synonyms("stop shut turn off quit constantly nonstop always continuously all time keep stuck",
          List.of("won't shut off", "never stops", "all the time", "keeps running", "keeps heating")),
      new Synonyms("ac air conditioner conditioning cooling cool cold hot warm house",
          List.of("no cooling", "not cold", "in cooling", "when cooling")),
      new Synonyms("heat heater furnace cold freezing hot warm house gas", List.of("no heat", "no warm")),
      new Synonyms("hot warm overheating heat", List.of("heat won't shut off")),
      new Synonyms("lukewarm cool cold weak enough strips elements electric", List.of("half heat")),
      new Synonyms("fan blower air airflow blowing blow vents registers indoor inside handler", List.of("blower")),
      new Synonyms("blowing blow blows vents", List.of("warm air", "blower", "no warm")),
      new Synonyms("outside outdoor outdoors condenser condensing compressor ac unit fan yard",
          List.of("outdoor unit", "unit outside")),
      new Synonyms("thermostat tstat stat screen display panel", List.of("thermostat")),
      new Synonyms("blank dead black dark off empty power screen display", List.of("blank")),
      new Synonyms("fuse blown blow blowing pop popping burn trip", List.of("fuse")),
      new Synonyms("buzz hum noise noisy chatter rattle click loud sound", List.of("buzzes", "hums", "clicks")),
      new Synonyms("burner flame pilot igniter ignition ignite light lit", List.of("burners")),
      new Synonyms("half only some enough", List.of("half", "only")));

  /**
   * Customers say these with anything. Negations are not among them: <em>no heat</em> is not <em>heat</em>.
   */
  static final Set<String> SAID_WITH_ANYTHING = Set.of("a", "an", "the", "is", "it", "its", "my", "our", "and", "or",
      "of", "to", "in", "on", "at", "when", "that", "this", "i", "we", "but", "with", "has", "have", "there", "are",
      "was", "be", "just", "out", "up", "me", "from", "for", "im", "were", "by", "so", "if", "does", "do", "will",
      "please", "help");

  /** What may also be said where these words are. */
  static List<SearchWord> of(List<SearchWord> words) {
    return ALL.stream().filter(synonyms -> synonyms.isMeantBy(words)).map(Synonyms::said)
        .flatMap(said -> SearchWord.of(said).stream()).distinct().toList();
  }

  private boolean isMeantBy(List<SearchWord> words) {
    Set<String> stems = words.stream().map(SearchWord::stem).collect(Collectors.toSet());
    return meant.stream().anyMatch(phrase -> stems(phrase).allMatch(stems::contains));
  }

  private static Stream<String> stems(String phrase) {
    return SearchWord.of(phrase).stream().filter(word -> !SAID_WITH_ANYTHING.contains(word.word()))
        .map(SearchWord::stem);
  }
}
