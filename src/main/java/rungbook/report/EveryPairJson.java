package rungbook.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Journey;
import rungbook.source.Witness;

/** What a tree does with every two faults at once, as JSON. */
final class EveryPairJson {

  private EveryPairJson() {}

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
      ProofJsonIntermittent.writePath(json, path.get());
    }
  }
}
