package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.report.Report;
import rungbook.report.json.Json;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Quiet;
import rungbook.source.Severity;
import rungbook.source.Silenced;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.source.Wording;

/** Problems as a SARIF 2.1.0 log (OASIS), which code review tools and editors read. */
public final class SarifReport {

  private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final List<Code> codes;
  private final boolean isAnySilenced;

  private SarifReport(Report report) {
    codes = Stream.concat(report.problems().stream(), report.silenced().stream().map(Silenced::problem))
        .map(Problem::code).distinct().sorted().toList();
    isAnySilenced = !report.silenced().isEmpty();
  }

  public static String of(Report report, String version) {
    SarifReport sarif = new SarifReport(report);
    return Json.write(json -> Json.item(json, log -> {
      log.writeStringField("$schema", SCHEMA);
      log.writeStringField("version", "2.1.0");
      Json.array(log, "runs", runs -> Json.item(runs, run -> sarif.writeRun(run, report, version)));
    }));
  }

  private void writeRun(JsonGenerator json, Report report, String version) throws IOException {
    Json.object(json, "tool", tool -> Json.object(tool, "driver", driver -> writeDriver(driver, version)));
    json.writeStringField("columnKind", "unicodeCodePoints");
    Json.array(json, "results", results -> {
      for (Problem problem : report.problems()) {
        Json.item(results, result -> writeResult(result, problem, Optional.empty()));
      }
      for (Silenced silenced : report.silenced()) {
        Json.item(results, result -> writeResult(result, silenced.problem(), Optional.of(silenced.quiet())));
      }
    });
  }

  private void writeDriver(JsonGenerator json, String version) throws IOException {
    json.writeStringField("name", "Rungbook");
    json.writeStringField("version", version);
    Json.array(json, "rules", rules -> {
      for (Code code : codes) {
        Json.item(rules, rule -> writeRule(rule, Wording.of(code)));
      }
    });
  }

  private static void writeRule(JsonGenerator json, Wording wording) throws IOException {
    json.writeStringField("id", wording.code().name());
    writeText(json, "shortDescription", wording.says());
    Json.object(json, "help", help -> {
      help.writeStringField("text", wording.hint());
      help.writeStringField("markdown", wording.page().strip());
    });
    Json.object(json, "defaultConfiguration",
        configuration -> configuration.writeStringField("level", level(wording.severity())));
  }

  private void writeResult(JsonGenerator json, Problem problem, Optional<Quiet> quiet) throws IOException {
    Wording wording = Wording.of(problem);
    json.writeStringField("ruleId", problem.code().name());
    json.writeNumberField("ruleIndex", codes.indexOf(problem.code()));
    json.writeStringField("level", level(wording.severity()));
    writeText(json, "message", message(wording, problem));
    Json.array(json, "locations",
        locations -> Json.item(locations, location -> writePlace(location, problem.source(), problem.span())));
    if (problem.witness().orElse(null) instanceof Witness.Path path && !path.stops().isEmpty()) {
      writeFlow(json, path);
    }
    if (problem.fix().isPresent()) {
      Json.array(json, "fixes", fixes -> Json.item(fixes, fix -> writeFix(fix, problem.fix().get())));
    }
    if (isAnySilenced) {
      writeSuppressions(json, quiet);
    }
  }

  /** Either all results of a run have suppressions, if only an empty list, or none has (3.27.23). */
  private static void writeSuppressions(JsonGenerator json, Optional<Quiet> quiet) throws IOException {
    Json.array(json, "suppressions", suppressions -> {
      if (quiet.isPresent()) {
        Json.item(suppressions, suppression -> {
          suppression.writeStringField("kind", "inSource");
          suppression.writeStringField("justification", quiet.get().reason());
          Json.object(suppression, "location",
              location -> writePlace(location, quiet.get().source(), quiet.get().span()));
        });
      }
    });
  }

  /** Writes one artifact change per edit: the standard allows several for one file (3.55.3). */
  private static void writeFix(JsonGenerator json, Fix fix) throws IOException {
    writeText(json, "description", fix.label());
    Json.array(json, "artifactChanges", changes -> {
      for (Edit edit : fix.edits()) {
        Json.item(changes, change -> writeChange(change, edit));
      }
    });
  }

  private static void writeChange(JsonGenerator json, Edit edit) throws IOException {
    writeArtifact(json, edit.source());
    Json.array(json, "replacements", all -> Json.item(all, replacement -> {
      Json.object(replacement, "deletedRegion", region -> writeRegion(region, edit.source(), edit.span()));
      writeText(replacement, "insertedContent", edit.replacement());
    }));
  }

  private static String message(Wording wording, Problem problem) {
    String shown = problem.witness().map(SarifReport::shown).orElse("");
    return wording.sentence(problem) + shown + ". Hint: " + wording.hint(problem) + ".";
  }

  private static String shown(Witness witness) {
    if (witness instanceof Witness.Reading reading) {
      return ", as a reading of " + reading.shown() + " shows";
    }
    if (witness instanceof Witness.Path path) {
      return path.variant().isEmpty() ? "" : ", in the variant " + path.variant();
    }
    return witness instanceof Witness.Answers answers
        ? ", as the answer `" + String.join(", ", answers.words()) + "` shows" : "";
  }

  private static void writeFlow(JsonGenerator json, Witness.Path path) throws IOException {
    Json.array(json, "codeFlows", flows -> Json.item(flows, flow -> Json.array(flow, "threadFlows",
        threads -> Json.item(threads, thread -> Json.array(thread, "locations", stops -> {
          for (Witness.Stop stop : path.stops()) {
            Json.item(stops, item -> Json.object(item, "location", location -> writeStop(location, stop)));
          }
        })))));
  }

  private static void writeStop(JsonGenerator json, Witness.Stop stop) throws IOException {
    writePlace(json, stop.source(), stop.span());
    writeText(json, "message", stop.answer().isEmpty() ? stop.step() : stop.step() + ": " + stop.answer());
  }

  private static void writePlace(JsonGenerator json, Source source, Span span) throws IOException {
    Json.object(json, "physicalLocation", place -> {
      writeArtifact(place, source);
      Json.object(place, "region", region -> writeRegion(region, source, span));
    });
  }

  private static void writeArtifact(JsonGenerator json, Source source) throws IOException {
    Json.object(json, "artifactLocation", artifact -> artifact.writeStringField("uri", FileUri.of(source.name())));
  }

  private static void writeRegion(JsonGenerator json, Source source, Span span) throws IOException {
    var start = source.placeAt(span.start());
    var end = source.placeAt(span.end());
    json.writeNumberField("startLine", start.line());
    json.writeNumberField("startColumn", start.column());
    json.writeNumberField("endLine", end.line());
    json.writeNumberField("endColumn", end.column());
  }

  private static void writeText(JsonGenerator json, String name, String text) throws IOException {
    Json.object(json, name, message -> message.writeStringField("text", text));
  }

  private static String level(Severity severity) {
    return severity.word(); // SARIF has the same three words
  }
}
