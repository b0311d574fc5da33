package rungbook.web.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.web.record.PracticeResults.Round;

/** Results of practice are read as the page wrote them, and what is wrong is said with its place. */
class PracticeReaderTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String FULL = PracticeSamples.FULL;
  private static final String SHORT = PracticeSamples.SHORT;

  private static PracticeResults read(String text) {
    return (PracticeResults) Sent.read(text);
  }

  private static RecordFault fault(String text) {
    return assertThrows(RecordFault.class, () -> Sent.read(text), text);
  }

  @Test
  void resultsAreReadAsThePageWroteThem() {
    PracticeResults results = read(FULL);
    assertEquals("Odalys Fernhøllow", results.name());
    assertEquals(2, results.saves());
    assertEquals(List.of("1 of 2 found", "3 unsafe acts"), results.sum());
    Round first = results.rounds().get(0);
    assertEquals("9-7-2-114", first.exercise());
    assertEquals(List.of("transformer secondary open"), first.faults());
    assertEquals("2.5 min of work, 2 min of walking", first.lasted());
    assertEquals("AC volts, R to C: 0.0 V", first.way().get(2));
    assertEquals(2, first.unsafeCount());
  }

  @Test
  void aMessageIsReadThoughItsLinesAreBroken() {
    String message = "PRACTICE, fan-coil-electric-heat\r\n1. Level 9\r\n\r\n" + FULL.replace(" secondary",
        "\r\nsecondary") + "\r\n-- \r\nSent from {a phone}";
    assertEquals(read(FULL), read(message));
  }

  @Test
  void theShortFormSaysTheSame() {
    PracticeResults full = read(FULL);
    PracticeResults made = read(SHORT);
    assertTrue(made.isShort());
    assertEquals(full.name() + full.system() + full.sum(), made.name() + made.system() + made.sum());
    assertTrue(full.digest().startsWith(made.digest()));
    assertEquals(full.rounds().stream().map(round -> round.level() + round.exercise() + round.faults() + round.lasted())
        .toList(),
        made.rounds().stream()
            .map(round -> round.level() + round.exercise() + round.faults() + round.lasted()).toList());
  }

  /** The page cuts anywhere, so beside a space too. */
  @Test
  void picturesAreJoinedWhereverTheyWereCut() {
    for (int cut = 1; cut < SHORT.length(); cut++) {
      String first = "RUNGBOOK 1/2 practice:" + SHORT.substring(0, cut);
      String second = "RUNGBOOK 2/2 practice:" + SHORT.substring(cut);
      assertEquals(read(SHORT), read(first + "\n" + second));
      assertEquals(read(SHORT), read(second + "\r\n\r\n" + first + "\r\n" + second));
      assertEquals(read(SHORT), read(first + " " + second));
      assertEquals(read(SHORT), read(second + "\n" + first));
    }
  }

  @Test
  void picturesThatDoNotBelongTogetherAreRefused() {
    String first = "RUNGBOOK 1/2 practice:" + SHORT.substring(0, 40);
    assertEquals("of 2 QR pictures these are missing: 2", fault(first).says());
    assertEquals("these QR pictures are of more than one record, or of two states of one",
        fault(first + "\nRUNGBOOK 2/2 8c1f:x").says());
    assertEquals("QR picture 1 is there twice, and not the same", fault(first + "\n" + first + "x").says());
    assertEquals("there is no field record in this text", fault("RUNGBOOK 1/1 practice:").says());
  }

  @Test
  void moreRoundsAreTheSameResultsAndAnotherLearnersAreNot() {
    PracticeResults results = read(FULL);
    int second = FULL.indexOf(",{\"level\":1");
    PracticeResults earlier = read(FULL.substring(0, second) + "]}");
    assertEquals(results.id(), earlier.id());
    assertTrue(results.saves() > earlier.saves());
    assertNotEquals(results.id(), read(FULL.replace("Odalys", "Perpetua")).id());
    assertNotEquals(results.id(), read(FULL.replaceFirst("\"started\":\"2026", "\"started\":\"2025")).id());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "\"format\":\"rungbook-practice/1\"|\"format\":\"rungbook-practice/2\"|`format` is not `rungbook-practice/1`, "
          + "which is all that this server reads",
      "\"right\":true|\"right\":\"yes\"|`rounds[0].right` is neither true nor false",
      "\"right\":true,|''|`rounds[0].right` is missing",
      "\"level\":9|\"level\":11|`rounds[0].level` is no whole number from 1 to 10",
      "\"level\":9|\"level\":0|`rounds[0].level` is no whole number from 1 to 10",
      "\"seed\":8|\"seed\":99999999999|`rounds[0].seed` is no whole number from 0",
      "\"minutes\":2.5|\"minutes\":-1|`rounds[0].minutes` is no number from 0 to 100000",
      "\"minutes\":2.5|\"minutes\":1e999|`rounds[0].minutes` is no number from 0 to 100000",
      "9-7-2-114|9-7|`rounds[0].exercise` is no code such as 3-8123-4, nor empty",
      "\"started\":\"2026-11-30|\"started\":\"2026-13-41|`rounds[0].started` is no time such as 2026-11-30T18:04:31Z",
      "\"system\":\"fan-coil-electric-heat\"|\"system\":\"\"|`system` has 0 characters, and 1 to 200 are read",
      "\"digest\":\"5|\"digest\":\"X|`digest` is not 64 hexadecimal digits",
      "\"walked\":2|\"walked\":2,\"ran\":1|`rounds[0].ran` is no field of a round",
      "\"name\":|\"names\":|`names` is no field of results of practice",
      "\"named\":[\"transformer secondary open\"]|\"named\":[]|`rounds[0].named` is no list of 1 or more",
      "\"named\":[\"transformer secondary open\"]|\"named\":[7]|`rounds[0].named[0]` is no text"})
  void whatIsWrongIsSaidWithItsPlace(String was, String is, String says) {
    RecordFault fault = fault(FULL.replaceFirst(Pattern.quote(was), is));
    assertEquals(says, fault.says());
    assertEquals("send the results as the practice page wrote them; docs/practice.md has their form", fault.hint());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "practice/1|practice/3|`f` is not `rungbook-practice/1`, which is all that this server reads",
      "\"d\":\"5e|\"d\":\"5|`d` is not 24 hexadecimal digits", "[[9,|[[99,|`r[0][0]` is no whole number from 1 to 10",
      "9-7-2-114|nine|`r[0][1]` is no code such as 3-8123-4, nor empty", "2.5,2,2]|2.5,2]|`r[0]` is no list of 7",
      "2.5,2,2]|2.5,2,2,2]|`r[0]` is no list of 7", "2.5,2,2]|2.5,2,-2]|`r[0][6]` is no whole number from 0 to 1000",
      "2.5,2,2]|\"x\",2,2]|`r[0][4]` is no number from 0 to 100000",
      "[\"transformer secondary open\"]|[]|`r[0][2]` is no list of 1 or more",
      "[\"transformer secondary open\"]|8|`r[0][2]` is no list of 1 or more",
      "\"r\":|\"rounds\":|`rounds` is no field of results of practice"})
  void whatIsWrongInPicturesIsSaidWithItsPlace(String was, String is, String says) {
    assertEquals(says, fault(SHORT.replaceFirst(Pattern.quote(was), is)).says());
  }

  @Test
  void whatIsCutOffIsRefused() {
    for (int end = 40; end < FULL.length(); end += 7) {
      assertTrue(fault(FULL.substring(0, end)).says().startsWith("the record's JSON cannot be read at character "));
    }
  }

  @Test
  void whatIsTooMuchIsRefused() {
    assertEquals("`name` has 201 characters, and 0 to 200 are read",
        fault(FULL.replace("Odalys Fernhøllow", "😀".repeat(201))).says());
    assertEquals(200 * 2, read(FULL.replace("Odalys Fernhøllow", "😀".repeat(200))).name().length());
    int begin = SHORT.indexOf("[[") + 1;
    String round = SHORT.substring(begin, SHORT.indexOf(",[1,"));
    String many = SHORT.substring(0, begin) + (round + ',').repeat(1000) + round + "]}";
    assertEquals("`r` has 1001 entries, and at most 1000 are read", fault(many).says());
  }

  @Test
  void aMegabyteOfSpacesTakesNoTime() {
    String spaces = " ".repeat(500_000);
    assertTimeout(Duration.ofSeconds(10), () -> {
      fault("RUNGBOOK 1/2 practice:" + spaces + "x" + spaces + "RUNGBOOK 1/2 8c1f:" + spaces + "x");
      fault(FULL.substring(0, FULL.length() - 1) + spaces + "x");
    });
  }

  /** Each field in turn is left out, made null, a number, a text, a list and an object, and a field is added. */
  @Test
  void theReaderTakesWhatThePublishedSchemaTakesAndNothingElse() throws IOException {
    Schema schema = PracticeSamples.schema();
    assertEquals(List.of(), schema.validate(FULL, InputFormat.JSON));
    List<String> spoiled = spoiled();
    assertTrue(spoiled.size() > 200, spoiled.size() + " texts");
    for (String text : spoiled) {
      boolean fits = schema.validate(text, InputFormat.JSON).isEmpty();
      boolean isRead = true;
      try {
        isRead = Sent.read(text) instanceof PracticeResults;
      } catch (RecordFault refused) {
        isRead = false;
      }
      assertEquals(fits, isRead, text);
    }
  }

  private static List<String> spoiled() throws JsonProcessingException {
    var all = new ArrayList<String>();
    JsonNode whole = JSON.readTree(FULL);
    spoil(whole, whole, all);
    return all;
  }

  private static void spoil(JsonNode whole, JsonNode at, List<String> all) {
    if (at instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      names.forEach(name -> spoil(whole, object, name, all));
      object.put("more", 1);
      all.add(whole.toString());
      object.remove("more");
    } else if (at instanceof ArrayNode list) {
      list.forEach(one -> spoil(whole, one, all));
    }
  }

  private static void spoil(JsonNode whole, ObjectNode object, String name, List<String> all) {
    JsonNode was = object.get(name);
    spoil(whole, was, all);
    for (JsonNode other : List.of(JSON.nullNode(), JSON.getNodeFactory().numberNode(-1),
        JSON.getNodeFactory().numberNode(0.5), JSON.getNodeFactory().textNode("x".repeat(5000)),
        JSON.getNodeFactory().textNode(""), JSON.createArrayNode(), JSON.createArrayNode().add("x"),
        JSON.createArrayNode().add(1), JSON.createObjectNode())) {
      object.set(name, other);
      all.add(whole.toString());
    }
    object.remove(name);
    all.add(whole.toString());
    object.set(name, was);
  }
}
