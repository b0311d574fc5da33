package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import rungbook.proof.report.Proof;

/** The base and the variants of a system, in the JSON of a proof. */
final class ProofJsonVariant {

  private ProofJsonVariant() {}

  static void write(JsonGenerator json, Proof proof) throws IOException {
    for (Proof.InVariant variant : proof.variants()) {
      Json.item(json, item -> write(item, variant));
    }
  }

  private static void write(JsonGenerator json, Proof.InVariant variant) throws IOException {
    json.writeStringField("name", variant.name());
    json.writeNumberField("share", variant.share());
    json.writeNumberField("drawn", variant.drawn());
    json.writeNumberField("faults", variant.faults());
    json.writeNumberField("named", variant.named());
    if (variant.named() > 0) {
      json.writeNumberField("detected", variant.detected());
    }
    if (variant.faults() > 0) {
      json.writeNumberField("mistaken", variant.mistaken());
    }
    json.writeNumberField("healthyCondemned", variant.falseAlarmShare());
    Json.array(json, "changed", array -> {
      for (Proof.ChangedFault fault : variant.changed()) {
        Json.item(array, item -> write(item, fault));
      }
    });
  }

  private static void write(JsonGenerator json, Proof.ChangedFault fault) throws IOException {
    json.writeStringField("case", fault.fault());
    json.writeBooleanField("named", fault.claimed());
    json.writeBooleanField("worse", fault.isWorse());
    json.writeNumberField("found", fault.ends().found());
    json.writeNumberField("mistaken", fault.ends().mistaken());
    json.writeNumberField("healthy", fault.ends().healthy());
    json.writeNumberField("referred", fault.ends().referred());
    json.writeNumberField("handedOn", fault.ends().handedOn());
    json.writeNumberField("nothing", fault.ends().nothing());
  }
}
