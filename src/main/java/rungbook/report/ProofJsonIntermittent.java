package rungbook.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungbook.proof.report.IntermittentFaults;
import rungbook.source.Witness;

/** Where faults end that come and go, as JSON. */
final class ProofJsonIntermittent {

  private ProofJsonIntermittent() {}

  static void write(JsonGenerator json, IntermittentFaults intermittent) throws IOException {
    ProofJsonPair.write(json, intermittent.all());
    Json.array(json, "faults", array -> {
      for (IntermittentFaults.Fault fault : intermittent.faults()) {
        Json.item(array, item -> {
          item.writeStringField("case", fault.name());
          item.writeNumberField("likelihood", fault.likelihood());
          ProofJsonPair.write(item, fault.ends());
        });
      }
    });
    Json.array(json, "wrongParts", array -> {
      for (IntermittentFaults.WrongPart wrong : intermittent.wrongParts()) {
        Json.item(array, item -> write(item, wrong));
      }
    });
  }

  private static void write(JsonGenerator json, IntermittentFaults.WrongPart wrong) throws IOException {
    json.writeStringField("case", wrong.fault());
    json.writeStringField("title", wrong.title());
    json.writeNumberField("likelihood", wrong.likelihood());
    json.writeStringField("goneFrom", wrong.goneFrom());
    writePath(json, wrong.path());
  }

  /** The steps of a path, with the answers. */
  static void writePath(JsonGenerator json, Witness.Path path) throws IOException {
    json.writeStringField("variant", path.variant());
    Json.array(json, "path", array -> {
      for (Witness.Stop stop : path.stops()) {
        Json.item(array, item -> {
          item.writeStringField("step", stop.step());
          item.writeStringField("answer", stop.answer());
        });
      }
    });
  }
}
