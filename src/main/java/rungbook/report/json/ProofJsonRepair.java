package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungbook.proof.report.Proof;

/** What follows the findings of a proof that lead on, as JSON. */
final class ProofJsonRepair {

  private ProofJsonRepair() {}

  static void write(JsonGenerator json, Proof proof) throws IOException {
    for (Proof.Repair repair : proof.repairs()) {
      Json.item(json, item -> {
        item.writeStringField("step", proof.tree().steps().get(repair.finding()).id());
        item.writeNumberField("passed", repair.passed());
        item.writeNumberField("noticed", repair.noticed());
        Json.array(item, "unmodelled", array -> {
          for (String title : repair.unmodeled()) {
            array.writeString(title);
          }
        });
        Json.array(item, "faults", array -> {
          for (Proof.RepairedFault fault : repair.faults()) {
            Json.item(array, one -> write(one, fault));
          }
        });
      });
    }
  }

  private static void write(JsonGenerator json, Proof.RepairedFault fault) throws IOException {
    json.writeStringField("case", fault.fault());
    json.writeNumberField("repaired", fault.repaired());
    json.writeNumberField("passed", fault.passed());
    json.writeNumberField("noticed", fault.noticed());
  }
}
