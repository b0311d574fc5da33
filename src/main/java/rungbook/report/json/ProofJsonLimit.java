package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungbook.proof.report.Proof;

/** A limit of a proof for programs. */
final class ProofJsonLimit {

  private ProofJsonLimit() {}

  static void write(JsonGenerator json, Proof.Limit limit) throws IOException {
    json.writeNumberField("at", limit.at());
    json.writeBooleanField("sound", limit.sound());
    if (limit.above().isPresent()) {
      Json.object(json, "over", bound -> write(bound, limit.above().get()));
    }
    if (limit.upTo().isPresent()) {
      Json.object(json, "upTo", bound -> write(bound, limit.upTo().get()));
    }
    if (limit.better().isPresent()) {
      json.writeNumberField("better", limit.better().get());
    }
    Json.array(json, "wrong", array -> {
      for (Proof.Misrouted one : limit.misrouted()) {
        Json.item(array, item -> write(item, one));
      }
    });
  }

  private static void write(JsonGenerator json, Proof.Bound bound) throws IOException {
    json.writeNumberField("shown", bound.shown());
    json.writeStringField("case", bound.fault());
    writeReading(json, bound.reading());
    json.writeStringField("circumstances", bound.circumstances());
  }

  private static void write(JsonGenerator json, Proof.Misrouted one) throws IOException {
    json.writeStringField("case", one.fault());
    json.writeNumberField("share", one.share());
    json.writeStringField("belongs", one.below() ? "below" : "above");
    writeReading(json, one.reading());
    json.writeStringField("circumstances", one.circumstances());
  }

  /** JSON has no infinity: an overload is a word. */
  private static void writeReading(JsonGenerator json, double reading) throws IOException {
    if (reading == Double.POSITIVE_INFINITY) {
      json.writeStringField("reading", "OL");
    } else {
      json.writeNumberField("reading", reading);
    }
  }
}
