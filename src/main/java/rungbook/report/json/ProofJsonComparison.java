package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import rungbook.proof.comparison.Against;
import rungbook.proof.comparison.ProofComparison;

/** What differs from the proof of an earlier text, in the JSON of a proof. */
final class ProofJsonComparison {

  private ProofJsonComparison() {}

  static void write(JsonGenerator json, Against against) throws IOException {
    json.writeStringField("name", against.name());
    if (against.found().isEmpty()) {
      json.writeStringField("why", against.why());
      return;
    }
    ProofComparison found = against.found().get();
    Json.object(json, "before", fields -> write(fields, found.before()));
    Json.object(json, "now", fields -> write(fields, found.now()));
    Json.array(json, "changes", array -> {
      for (ProofComparison.CaseChange change : found.changes()) {
        Json.item(array, item -> write(item, change));
      }
    });
  }

  private static void write(JsonGenerator json, ProofComparison.Figures figures) throws IOException {
    json.writeNumberField("named", figures.named());
    json.writeNumberField("detected", figures.detected());
    json.writeNumberField("healthyCondemned", figures.falseAlarms());
    json.writeNumberField("meanChecks", figures.checks());
    json.writeNumberField("meanMinutes", figures.minutes());
  }

  private static void write(JsonGenerator json, ProofComparison.CaseChange change) throws IOException {
    json.writeStringField("case", change.name());
    json.writeNumberField("likelihood", change.likelihood());
    json.writeBooleanField("worse", change.isWorse());
    Json.array(json, "before", array -> write(array, change.before()));
    Json.array(json, "now", array -> write(array, change.now()));
  }

  private static void write(JsonGenerator json, List<ProofComparison.EndShare> ends) throws IOException {
    for (ProofComparison.EndShare end : ends) {
      Json.item(json, item -> {
        item.writeStringField("title", end.title());
        item.writeStringField("names", end.names());
        item.writeNumberField("share", end.share());
      });
    }
  }
}
