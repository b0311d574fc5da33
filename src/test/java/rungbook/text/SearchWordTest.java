package rungbook.text;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchWordTest {
  @ParameterizedTest
  @CsvSource({"buzz,buzzes", "buzzing,buzz", "buzzes,buzzing", "stop,stops", "stops,stopping", "stopped,stop",
      "fuses,fuse", "cycling,cycle", "blow,blower",
      "wont,won't", "won’t,wont", "a/c,AC volts", "AC,the A/C", "trips,tripping", "cool,No cooling", "noises,noise"})
  void otherEndingsAndSpellingsAreFound(String asked, String said) {
    assertTrue(finds(asked, said));
  }

  @ParameterizedTest
  @CsvSource({"a/c,across a contact", "AC,access panel", "AC,furnace", "top,stop", "ring,during", "fan,infant",
      "heating,heater", "off,of"})
  void theInsideOfAWordAndOtherWordsAreNot(String asked, String said) {
    assertFalse(finds(asked, said));
  }

  @Test
  void aTextWithoutAWordHasNone() {
    assertTrue(SearchWord.of(" ' / ? ").isEmpty());
  }

  private static boolean finds(String asked, String said) {
    return SearchWord.of(asked).stream().allMatch(word -> word.isIn(SearchWord.of(said)));
  }
}
