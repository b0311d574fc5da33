package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Proof;

/** Where every case ends through all trees, as JSON. */
final class ProofJsonJourney {

  private ProofJsonJourney() {}

  static void write(JsonGenerator json, Proof proof) throws IOException {
    for (Journey journey : proof.journeys()) {
      Json.item(json, item -> write(item, journey));
    }
  }

  private static void write(JsonGenerator json, Journey journey) throws IOException {
    json.writeStringField("case", journey.fault());
    json.writeNumberField("checks", journey.checks());
    json.writeNumberField("minutes", journey.minutes());
    Json.array(json, "ends", array -> {
      for (Journey.Place place : journey.places()) {
        Json.item(array, item -> write(item, place));
      }
    });
  }

  static void write(JsonGenerator json, Journey.Place place) throws IOException {
    json.writeStringField("how", name(place.fate()));
    json.writeStringField("tree", place.tree());
    json.writeStringField("title", place.title());
    json.writeNumberField("share", place.share());
  }

  static String name(Journey.Fate fate) {
    return switch (fate) {
      case FOUND, MISTAKEN, HEALTHY, REFERRED -> fate.name().toLowerCase(Locale.ROOT);
      case STUCK -> "nothing";
      case IN_A_CIRCLE -> "inCircle";
      case NOT_FOLLOWED -> "notFollowed";
    };
  }
}
