package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import rungbook.report.Report;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Place;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Silenced;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.source.Wording;

/** Problems for programs; {@code docs/json-report.md} describes the fields. */
public final class JsonReport {

  /** Incremented when a field changes its meaning or is removed. */
  public static final int VERSION = 1;

  private JsonReport() {}

  public static String of(Report report) {
    return Json.write(json -> Json.item(json, fields -> {
      fields.writeNumberField("rungbook", VERSION);
      fields.writeNumberField("files", report.files());
      Json.object(fields, "counts", counts -> writeCounts(counts, report));
      writeAll(fields, report);
    }));
  }

  /** What is shown, and what is silenced. */
  static void writeAll(JsonGenerator json, Report report) throws IOException {
    Json.array(json, "problems", problems -> {
      for (Problem problem : report.problems()) {
        Json.item(problems, item -> write(item, problem));
      }
    });
    Json.array(json, "silenced", all -> {
      for (Silenced silenced : report.silenced()) {
        Json.item(all, item -> write(item, silenced));
      }
    });
  }

  private static void write(JsonGenerator json, Silenced silenced) throws IOException {
    write(json, silenced.problem());
    Json.object(json, "quiet", quiet -> {
      quiet.writeStringField("reason", silenced.quiet().reason());
      writePlace(quiet, silenced.quiet().source(), silenced.quiet().span());
    });
  }

  private static void writeCounts(JsonGenerator json, Report report) throws IOException {
    for (Severity severity : Severity.values()) {
      json.writeNumberField(severity.word(), report.count(severity));
    }
    json.writeNumberField("silenced", report.silenced().size());
  }

  private static void write(JsonGenerator json, Problem problem) throws IOException {
    Wording wording = Wording.of(problem);
    json.writeStringField("code", problem.code().name());
    json.writeStringField("severity", wording.severity().word());
    writePlace(json, problem.source(), problem.span());
    json.writeStringField("says", wording.sentence(problem));
    json.writeStringField("hint", wording.hint(problem));
    Json.object(json, "facts", facts -> {
      for (Map.Entry<String, String> fact : new TreeMap<>(problem.facts()).entrySet()) {
        facts.writeStringField(fact.getKey(), fact.getValue());
      }
    });
    if (problem.witness().isPresent()) {
      Json.object(json, "witness", witness -> writeWitness(witness, problem.witness().get()));
    }
    if (problem.fix().isPresent()) {
      Json.object(json, "fix", fix -> writeFix(fix, problem.fix().get()));
    }
  }

  private static void writeFix(JsonGenerator json, Fix fix) throws IOException {
    json.writeStringField("label", fix.label());
    Json.array(json, "edits", edits -> {
      for (Edit edit : fix.edits()) {
        Json.item(edits, item -> {
          writePlace(item, edit.source(), edit.span());
          item.writeStringField("replacement", edit.replacement());
        });
      }
    });
  }

  private static void writePlace(JsonGenerator json, Source source, Span span) throws IOException {
    Place start = source.placeAt(span.start());
    Place end = source.placeAt(span.end());
    json.writeStringField("file", source.name());
    json.writeNumberField("line", start.line());
    json.writeNumberField("column", start.column());
    json.writeNumberField("endLine", end.line());
    json.writeNumberField("endColumn", end.column());
  }

  private static void writeWitness(JsonGenerator json, Witness witness) throws IOException {
    if (witness instanceof Witness.Reading reading) {
      json.writeStringField("reading", reading.shown());
    } else if (witness instanceof Witness.Answers answers) {
      Json.array(json, "answers", words -> {
        for (String word : answers.words()) {
          words.writeString(word);
        }
      });
    } else if (witness instanceof Witness.Path path) {
      if (!path.variant().isEmpty()) {
        json.writeStringField("variant", path.variant());
      }
      Json.array(json, "path", stops -> {
        for (Witness.Stop stop : path.stops()) {
          Json.item(stops, item -> writeStop(item, stop));
        }
      });
    }
  }

  private static void writeStop(JsonGenerator json, Witness.Stop stop) throws IOException {
    json.writeStringField("step", stop.step());
    json.writeStringField("answer", stop.answer());
    writePlace(json, stop.source(), stop.span());
  }
}
