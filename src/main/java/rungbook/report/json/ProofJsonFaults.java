package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.IntermittentFaults;
import rungbook.proof.report.Journey;
import rungbook.proof.report.PairOutcome;
import rungbook.proof.report.Proof;
import rungbook.source.Witness;

/** Faults beyond one that stays, as JSON: two that come together, every two, and those that come and go. */
final class ProofJsonFaults {

  private ProofJsonFaults() {}

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

  static void write(JsonGenerator json, EveryPair pairs) throws IOException {
    json.writeNumberField("all", pairs.all());
    json.writeNumberField("tried", pairs.tried());
    json.writeNumberField("giving", pairs.giving());
    json.writeNumberField("drawn", pairs.drawn());
    for (Journey.Fate fate : Journey.Fate.values()) {
      json.writeNumberField(ProofJsonJourney.name(fate), pairs.share(fate));
    }
    json.writeNumberField("repaired", pairs.repaired());
    json.writeNumberField("bothRepaired", pairs.both());
    json.writeNumberField("secondNoticed", pairs.noticed());
    json.writeNumberField("secondMissed", pairs.missed());
    json.writeNumberField("secondHarmless", pairs.harmless());
    Json.array(json, "masks", array -> {
      for (EveryPair.Mask mask : pairs.masks()) {
        Json.item(array, item -> write(item, mask));
      }
    });
  }

  private static void write(JsonGenerator json, EveryPair.Mask mask) throws IOException {
    json.writeStringField("masked", mask.masked());
    json.writeStringField("by", mask.by());
    json.writeBooleanField("mutual", mask.isMutual());
    json.writeStringField("how", ProofJsonJourney.name(mask.fate()));
    json.writeStringField("tree", mask.tree());
    json.writeStringField("title", mask.title());
    json.writeNumberField("share", mask.share());
    json.writeNumberField("likelihood", mask.likelihood());
    Optional<Witness.Path> path = mask.path();
    if (path.isPresent()) {
      writePath(json, path.get());
    }
  }

  static void write(JsonGenerator json, IntermittentFaults intermittent) throws IOException {
    write(json, intermittent.all());
    Json.array(json, "faults", array -> {
      for (IntermittentFaults.Fault fault : intermittent.faults()) {
        Json.item(array, item -> {
          item.writeStringField("case", fault.name());
          item.writeNumberField("likelihood", fault.likelihood());
          write(item, fault.ends());
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
