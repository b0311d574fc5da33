package rungbook.report.demand;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import rungbook.proof.demand.ReadingAnswer;
import rungbook.proof.demand.ReadingQuestion;
import rungbook.proof.demand.Shown;
import rungbook.report.json.Json;
import rungbook.report.json.JsonReport;
import rungbook.system.Fault;
import rungbook.system.Terminal;

/** A reading on demand for programs; {@code docs/json-report.md} describes the fields. */
public final class ReadingJson {

  private final ReadingAnswer answer;
  private final ReadingQuestion question;

  private ReadingJson(ReadingAnswer answer) {
    this.answer = answer;
    this.question = answer.question();
  }

  public static String of(ReadingAnswer answer) {
    return Json.write(json -> Json.item(json, fields -> new ReadingJson(answer).write(fields)));
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeNumberField("rungbook", JsonReport.VERSION);
    json.writeStringField("system", question.system().vocabulary().id());
    json.writeStringField("variant", question.variant());
    Json.array(json, "set", all -> {
      for (String setting : question.settings()) {
        all.writeString(setting);
      }
    });
    json.writeStringField("fault", question.fault().map(Fault::name).orElse(""));
    json.writeStringField("meter", question.meter().id());
    json.writeStringField("quantity", question.measured());
    Json.array(json, "leads", all -> {
      for (Terminal lead : question.leads()) {
        all.writeString(question.words(lead));
      }
    });
    Json.object(json, "reading", this::writeReading);
    shares(json, "on", answer.activity().on(), key -> ReadingWords.part(key, question));
    shares(json, "humming", answer.activity().humming(), key -> ReadingWords.part(key, question));
    shares(json, "seen", answer.activity().seen(), key -> ReadingWords.sight(key, question));
  }

  private void writeReading(JsonGenerator json) throws IOException {
    if (answer.shown() instanceof Shown.Nothing nothing) {
      json.writeStringField("none", word(nothing.why()));
    } else if (answer.shown() instanceof Shown.Amounts amounts) {
      json.writeNumberField("low", amounts.low());
      json.writeNumberField("usual", amounts.usual());
      json.writeNumberField("high", amounts.high());
      json.writeStringField("unit", question.quantity().unit());
      json.writeBooleanField("stray", amounts.lowImpedance().isPresent());
      if (amounts.lowImpedance().isPresent()) {
        json.writeNumberField("atLowImpedance", amounts.lowImpedance().get());
      }
      if (amounts.elsewhere().isPresent()) {
        json.writeStringField("elsewhere", word(amounts.elsewhere().get()));
      }
    }
  }

  private static String word(Enum<?> why) {
    return why.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static void shares(JsonGenerator json, String name, Map<String, Double> shares,
      Function<String, String> names) throws IOException {
    Json.object(json, name, all -> {
      for (Map.Entry<String, Double> one : new TreeMap<>(shares).entrySet()) {
        all.writeNumberField(names.apply(one.getKey()), one.getValue());
      }
    });
  }
}
