package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rungbook.proof.accounting.TestabilityMeasures;
import rungbook.proof.comparison.Against;
import rungbook.proof.coverage.SystemCoverage;
import rungbook.proof.propagation.End;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.IntermittentFaults;
import rungbook.proof.report.Proof;
import rungbook.report.Report;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** Proofs for programs; {@code docs/proof.md} describes the fields. */
public final class ProofJson {

  private static final String PROOFS = "proofs";

  private ProofJson() {}

  /**
   * A proof and the path of its file for display.
   *
   * @param against how it differs from that of an earlier text; empty unless it was asked for
   * @param pairs what the tree does with every two faults at once, where that was asked for
   */
  public record Of(String file, Proof proof, Optional<Against> against, Optional<EveryPair> pairs) {}

  public static String of(List<Of> proofs, Report report) {
    return of(proofs.stream().map(ProofJson::item).toList(), List.of(), report);
  }

  /**
   * @param items as {@link #item} gives them
   * @param library what the trees find together; empty unless it was asked for
   */
  public static String of(List<String> items, List<SystemCoverage> library, Report report) {
    return Json.write(json -> Json.item(json, fields -> {
      fields.writeNumberField("rungbook", JsonReport.VERSION);
      Json.array(fields, PROOFS, array -> {
        for (String item : items) {
          array.writeRawValue(item);
        }
      });
      if (!library.isEmpty()) {
        Json.array(fields, "library", array -> CoverageJson.write(array, library));
      }
      JsonReport.writeAll(fields, report);
    }));
  }

  /** One proof as it is written in the document. */
  public static String item(Of proof) {
    String document = Json.write(json -> Json.item(json,
        fields -> Json.array(fields, PROOFS, array -> Json.item(array, item -> write(item, proof)))));
    return document.substring(document.indexOf('{', 1), document.lastIndexOf(']')).stripTrailing();
  }

  private static void write(JsonGenerator json, Of of) throws IOException {
    Proof proof = of.proof();
    json.writeStringField("file", of.file());
    json.writeStringField("system", proof.tree().system().map(words -> words.id()).orElse(""));
    json.writeNumberField("drawn", proof.drawn());
    json.writeNumberField("corners", proof.corners());
    Json.object(json, "complaint", fields -> ProofJsonComplaint.write(fields, proof.complaint()));
    Json.object(json, "named", fields -> write(fields, proof.claimed()));
    Json.object(json, "whole", fields -> write(fields, proof.whole()));
    json.writeNumberField("healthyCondemned", proof.falseAlarmShare());
    json.writeNumberField("meanChecks", proof.meanChecks());
    json.writeNumberField("meanMinutes", proof.meanMinutes());
    Json.array(json, "unmodelled", array -> {
      for (String title : proof.unmodeled()) {
        array.writeString(title);
      }
    });
    if (!proof.variants().isEmpty()) {
      Json.array(json, "variants", array -> ProofJsonVariant.write(array, proof));
    }
    Json.array(json, "cases", array -> writeOutcomes(array, proof));
    Json.array(json, "endings", array -> writeEndings(array, proof));
    Json.array(json, "journeys", array -> ProofJsonJourney.write(array, proof));
    Json.array(json, "checks", array -> writeChecks(array, proof));
    Json.array(json, "ways", array -> writeWays(array, proof));
    if (!proof.repairs().isEmpty()) {
      Json.array(json, "repairs", array -> ProofJsonRepair.write(array, proof));
    }
    if (of.against().isPresent()) {
      Json.object(json, "against", fields -> ProofJsonComparison.write(fields, of.against().get()));
    }
    Json.object(json, "intermittent", fields -> ProofJsonFaults.write(fields, proof.intermittent()));
    if (!proof.pairs().isEmpty()) {
      Json.array(json, "pairs", array -> ProofJsonFaults.write(array, proof));
    }
    if (of.pairs().isPresent()) {
      EveryPair pairs = of.pairs().get();
      Json.object(json, "everyPair", fields -> ProofJsonFaults.write(fields, pairs));
    }
  }

  private static void write(JsonGenerator json, TestabilityMeasures measures) throws IOException {
    json.writeNumberField("faults", measures.faults());
    json.writeNumberField("likelihood", measures.likelihood());
    json.writeNumberField("detected", measures.detected());
    json.writeArrayFieldStart("isolated");
    for (double share : measures.isolated()) {
      json.writeNumber(share);
    }
    json.writeEndArray();
    json.writeNumberField("meanGroup", measures.meanGroup());
  }

  private static void writeOutcomes(JsonGenerator json, Proof proof) throws IOException {
    for (Proof.Outcome outcome : proof.outcomes()) {
      Json.item(json, item -> {
        item.writeStringField("name", outcome.name());
        item.writeNumberField("likelihood", outcome.likelihood());
        item.writeBooleanField("named", outcome.claimed());
        item.writeNumberField("found", outcome.found());
        item.writeNumberField("mistaken", outcome.mistaken());
        item.writeNumberField("healthy", outcome.healthy());
        item.writeNumberField("referred", outcome.referred());
        item.writeNumberField("handedOn", outcome.handedOn());
        item.writeNumberField("nothing", outcome.nothing());
        item.writeNumberField("checks", outcome.checks());
        item.writeNumberField("minutes", outcome.minutes());
      });
    }
  }

  private static void writeEndings(JsonGenerator json, Proof proof) throws IOException {
    for (Proof.Ending ending : proof.endings()) {
      Json.item(json, item -> {
        item.writeStringField("kind", kind(ending.end()));
        item.writeStringField("title", ending.title());
        item.writeNumberField("likelihood", ending.likelihood());
        item.writeNumberField("group", ending.group());
        if (ending.end() instanceof End.Finding finding) {
          item.writeNumberField("byExclusion", proof.intermittent().excluded(finding.step())
              .map(IntermittentFaults.Excluded::share).orElse(0.0));
        }
        Json.array(item, "arrive", array -> {
          for (Proof.Arrived arrived : ending.arrived()) {
            Json.item(array, one -> {
              one.writeStringField("case", arrived.fault());
              one.writeNumberField("share", arrived.share());
              one.writeBooleanField("named", arrived.named());
            });
          }
        });
      });
    }
  }

  private static String kind(End end) {
    if (end instanceof End.Finding) {
      return "finding";
    }
    return end instanceof End.HandedOn ? "tree" : end instanceof End.Ended ? "end" : "stuck";
  }

  private static void writeChecks(JsonGenerator json, Proof proof) throws IOException {
    for (Proof.Check check : proof.checks()) {
      Json.item(json, item -> {
        item.writeStringField("step", proof.tree().steps().get(check.step()).id());
        item.writeNumberField("inconclusive", check.inconclusive());
        item.writeNumberField("consumersRisk", check.risks().consumer());
        item.writeNumberField("producersRisk", check.risks().producer());
        Json.array(item, "limits", array -> {
          for (Proof.Limit limit : check.limits()) {
            Json.item(array, one -> ProofJsonLimit.write(one, limit));
          }
        });
      });
    }
  }

  private static void writeWays(JsonGenerator json, Proof proof) throws IOException {
    for (Proof.WayFlow flow : proof.ways()) {
      Step step = proof.tree().steps().get(flow.step());
      Way way = step.ways().get(flow.way());
      Json.item(json, item -> {
        item.writeStringField("step", step.id());
        item.writeStringField("answer", way.written());
        item.writeNumberField("healthy", flow.healthy());
        item.writeNumberField("likelihood", flow.likelihood());
      });
    }
  }
}
