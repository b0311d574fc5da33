package rungbook.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.library.Folder;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.solving.SystemReadings.Outcome;
import rungbook.library.solving.SystemReadings;
import rungbook.proof.demand.ReadingRequest;
import rungbook.web.http.ProblemException;

/** What the REST interface answers to wrong names; the words of a right answer are those of the shell. */
class ReadingNamesTest {
  private static final String FURNACE = "split-cooling-gas-furnace";
  private static final SystemReadings READINGS = new SystemReadings();
  private static LibraryText library;

  @BeforeAll
  static void read() throws IOException {
    library = Folder.read(Path.of(""));
  }

  private static ProblemException.Report refused(Map<String, String> words) {
    var request = new ReadingRequest(word(words, "variant"), word(words, "at"), word(words, "leads"),
        words.containsKey("set") ? List.of(word(words, "set")) : List.of(), word(words, "fault"),
        word(words, "quantity"));
    Outcome outcome = READINGS.answer(words.getOrDefault("system", FURNACE), word(words, "meter"), request, library,
        LibraryCompiler.sharedAsNeeded(library));
    return assertThrows(ProblemException.class, () -> ReadingApi.json(outcome)).report();
  }

  private static String word(Map<String, String> words, String name) {
    return words.getOrDefault(name, "");
  }

  @ParameterizedTest
  @CsvSource({"system, split-cooling-gas-furnac, split-cooling-gas-furnace", "at, condensor, condenser",
      "leads, Yy, Y", "set, thermostat coolin, cooling", "fault, control fuse opened, control fuse open",
      "quantity, AC volt, AC volts", "meter, field-metr, field-meter", "variant, 208 V suply, 208 V supply"})
  void aWrongNameHasItsParameterAndTheNearest(String field, String written, String nearest) {
    var report = refused(Map.of(field, written));
    assertEquals(400, report.status());
    assertEquals(field, report.more().get("field"));
    assertEquals(nearest, report.more().get("nearest"));
    assertTrue(report.hint().contains(nearest), report.hint());
  }

  @Test
  void everyWrongNameIsInTheList() {
    var report = refused(Map.of("at", "condensor", "fault", "no such thing at all", "set", "thermostat coolin"));
    @SuppressWarnings("unchecked")
    var problems = (List<Map<String, String>>) report.more().get("problems");
    assertEquals(List.of("at", "fault", "set"), problems.stream().map(one -> one.get("field")).sorted().toList());
    assertEquals("", problems.stream().filter(one -> one.get("field").equals("fault")).findFirst().orElseThrow()
        .get("nearest"), "nothing is like it");
  }

  @Test
  void aSystemWithoutACircuitIsNotTheAskersFault() {
    var report = assertThrows(ProblemException.class, () -> ReadingApi.json(new Outcome.Unsolvable("no parts")))
        .report();
    assertEquals(422, report.status());
    assertEquals("no parts", report.detail());
  }
}
