package rungbook.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.PairOutcome;
import rungbook.proof.report.Proof;

/** The faults that come together, as JSON. */
final class ProofJsonPair {

  private ProofJsonPair() {}

  static void write(JsonGenerator json, Proof proof) throws IOException {
    for (PairOutcome pair : proof.pairs()) {
      Json.item(json, item -> write(item, pair));
    }
  }

  private static void write(JsonGenerator json, PairOutcome pair) throws IOException {
    json.writeArrayFieldStart("faults");
    for (String fault : pair.faults()) {
      json.writeString(fault);
    }
    json.writeEndArray();
    json.writeNumberField("likelihood", pair.likelihood());
    write(json, pair.ends());
    json.writeNumberField("bothRepaired", pair.both());
    json.writeNumberField("secondNoticed", pair.noticed());
    json.writeNumberField("secondMissed", pair.missed());
  }

  static void write(JsonGenerator json, EndShares ends) throws IOException {
    json.writeNumberField("found", ends.found());
    json.writeNumberField("mistaken", ends.mistaken());
    json.writeNumberField("healthy", ends.healthy());
    json.writeNumberField("referred", ends.referred());
    json.writeNumberField("handedOn", ends.handedOn());
    json.writeNumberField("nothing", ends.nothing());
  }
}
