package rungbook.web.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the published schema takes is read, and what is wrong is said with its place. */
class RecordReaderTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String FULL = RecordSamples.FULL;

  private static final String SHORT = RecordSamples.SHORT;

  private static FieldRecord read(String text) {
    return (FieldRecord) Sent.read(text);
  }

  @Test
  void aRecordIsReadAsThePackWroteIt() {
    FieldRecord record = read(FULL);
    assertEquals("Hill farm, unit 2", record.job());
    assertEquals(2, record.packs().size());
    assertEquals("5 T1 to T2", record.steps().get(3).at().name());
    assertEquals("198.5 V", record.steps().get(3).measured());
    assertEquals(List.of("Get everybody out of the building now.", "Fault: outdoor supply low",
        "Stop here and call: the electrician"), record.now().says());
    assertEquals(Optional.of(Instant.parse("2026-11-30T18:40:00Z")), record.closed());
    assertEquals(List.of("electrical cover off"), record.left());
  }

  @Test
  void theShortFormSaysTheSame() {
    FieldRecord full = read(FULL);
    FieldRecord made = read(SHORT);
    assertTrue(made.isShort());
    assertEquals(full.id() + full.saves() + full.job() + full.notes(),
        made.id() + made.saves() + made.job() + made.notes());
    assertEquals(full.steps().stream().map(step -> step.at().tree() + step.at().step() + step.answer() + step.measured()
        + step.note()).toList(),
        made.steps().stream().map(step -> step.at().tree() + step.at().step() + step.answer() + step.measured()
            + step.note()).toList());
    assertEquals(full.left(), made.left());
    assertEquals(full.why(), made.why());
    for (int i = 0; i < full.steps().size(); i++) {
      long apartMillis = full.steps().get(i).time().toEpochMilli() - made.steps().get(i).time().toEpochMilli();
      assertTrue(Math.abs(apartMillis) < 3000);
    }
  }

  @Test
  void aMessageWithMoreAroundItIsReadThoughItsLinesAreBroken() {
    String message = "FIELD RECORD\r\nStep 1\r\n\r\n" + FULL.replace(" farm", "\r\nfarm")
        + "\r\n-- \r\nSent from {a phone}";
    assertEquals(read(FULL), read(message));
  }

  @Test
  void picturesAreReadInAnyOrderAndOnceOrTwice() {
    int half = SHORT.length() / 2;
    String first = "RUNGBOOK 1/2 8c1f:" + SHORT.substring(0, half);
    String second = "RUNGBOOK 2/2 8c1f:" + SHORT.substring(half);
    assertEquals(read(SHORT), read(second + "\n" + first + "\n\n" + second + "\n"));
    assertEquals("of 2 QR pictures these are missing: 1", fault(second));
    assertEquals("these QR pictures are of more than one record, or of two states of one",
        fault(first + "\n" + second.replace("8c1f", "0000")));
    assertEquals("QR picture 1 is there twice, and not the same", fault(first + "\n" + second + "\n" + first + "x"));
  }

  private static String fault(String text) {
    return assertThrows(RecordFault.class, () -> read(text)).says();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "''|there is no text", "a text|there is no field record in this text",
      "{\"format\":\"rungbook-record/1\"|the record's JSON cannot be read at character 30",
      "{}|`format` is missing",
      "{\"format\":\"rungbook-record/2\"}|`format` is not `rungbook-record/1`, which is all that this server reads",
      "{\"f\":2}|`f` is not 1, which is all that this server reads", "{\"f\":1}|`p` is missing"})
  void whatIsNoRecordIsSaidWithItsPlace(String text, String says) {
    assertEquals(says, fault(text));
  }

  @Test
  void aDeepListIsRefused() {
    assertTrue(fault("{\"format\":" + "[".repeat(100_000)).startsWith("the record's JSON cannot be read"));
  }

  /** Each field in turn is left out, made null, a number, a text and a list, and a field is added to each object. */
  @Test
  void theReaderTakesWhatThePublishedSchemaTakesAndNothingElse() throws IOException {
    Schema schema = schema();
    List<String> spoiled = spoiled();
    assertTrue(spoiled.size() > 300, spoiled.size() + " records");
    for (String record : spoiled) {
      boolean fits = schema.validate(record, InputFormat.JSON).isEmpty();
      boolean isRead = true;
      try {
        Sent.read(record);
      } catch (RecordFault refused) {
        isRead = false;
      }
      assertEquals(fits, isRead, record);
    }
  }

  private static Schema schema() throws IOException {
    try (InputStream published = RecordReaderTest.class
        .getResourceAsStream("/META-INF/resources/schema/field-record.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(published,
          InputFormat.JSON);
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
      for (String name : names) {
        JsonNode was = object.get(name);
        spoil(whole, was, all);
        for (JsonNode other : List.of(JSON.nullNode(), JSON.getNodeFactory().numberNode(-1),
            JSON.getNodeFactory().numberNode(0.5), JSON.getNodeFactory().textNode("x"), JSON.createArrayNode(),
            JSON.createObjectNode())) {
          object.set(name, other);
          all.add(whole.toString());
        }
        object.remove(name);
        all.add(whole.toString());
        object.set(name, was);
      }
      object.put("more", 1);
      all.add(whole.toString());
      object.remove("more");
    } else if (at instanceof ArrayNode list) {
      IntStream.range(0, Math.min(2, list.size())).forEach(i -> spoil(whole, list.get(i), all));
    }
  }
}
