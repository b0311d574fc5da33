package rungbook.web.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import rungbook.web.record.FieldRecord.Answered;
import rungbook.web.record.FieldRecord.FollowedPack;
import rungbook.web.record.FieldRecord.Stop;

/** Reads a record's JSON. What the published schema takes is read, and nothing else. */
public final class RecordReader {
  static final String FORMAT = "rungbook-record/1";
  private static final Pattern ID = Pattern.compile("[0-9a-f]{16}");
  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");
  private static final Set<String> KINDS = Set.of("check", "task", "finding", "end");
  private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
      .build();

  private RecordReader() {}

  /**
   * @param json in full, or the short form of QR pictures
   * @throws RecordFault with the place of what is wrong
   */
  public static FieldRecord read(String json) {
    var whole = new Fields(parsed(json), "");
    return whole.has("f") ? ShortRecord.read(whole) : full(whole);
  }

  private static JsonNode parsed(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException broken) {
      var at = broken.getLocation();
      throw new RecordFault("the record's JSON cannot be read at character " + (at == null ? 0 : at.getColumnNr()),
          "it was cut off or changed on the way: share it again");
    }
  }

  static String id(Fields record, String name) {
    return record.text(name, ID, "not 16 hexadecimal digits");
  }

  private static FieldRecord full(Fields record) {
    if (!record.text("format").equals(FORMAT)) {
      throw Fields.wrong("format", "is not `" + FORMAT + "`, which is all that this server reads");
    }
    onlyKnown(record, RecordFields.RECORD);
    if (record.has("from")) {
      id(record, "from");
    }
    record.optionalTime("handedOut");
    var packs = record.objects("packs", 1, RecordReader::pack);
    var steps = record.objects("steps", 1, step -> answered(step, packs.size()));
    var undone = record.objects("undone", 0, step -> answered(step, packs.size()));
    var closed = record.optionalTime("closed");
    var left = closed.isPresent() ? record.texts("left") : record.optionalTexts("left");
    return new FieldRecord(id(record, "id"), record.count("saves", 1), record.time("saved"), record.text("job"),
        record.text("notes"), packs, steps, undone, now(record.object("now"), packs.size()), closed,
        closed.isPresent() ? left : steps.get(steps.size() - 1).open(), record.optionalText("why"), false);
  }

  private static void onlyKnown(Fields fields, Set<String> known) {
    fields.node().fieldNames().forEachRemaining(name -> {
      if (!known.contains(name)) {
        throw Fields.wrong(fields.place().isEmpty() ? name : fields.place() + "." + name, "is no field of a record");
      }
    });
  }

  private static FollowedPack pack(Fields pack) {
    onlyKnown(pack, RecordFields.PACK);
    pack.text("file");
    return new FollowedPack(pack.text("tree"), pack.text("title"),
        pack.text("digest", DIGEST, "not 64 hexadecimal digits"), pack.text("revision"), pack.optionalText("system"),
        pack.text("meter"));
  }

  private static Stop now(Fields place, int packs) {
    onlyKnown(place, RecordFields.PLACE);
    if (place.has("pack")) {
      packIndex(place, packs);
    }
    place.optionalText("file");
    return stop(place);
  }

  private static Stop stop(Fields place) {
    return new Stop(place.text("tree"), place.text("step"), place.text("number"), place.text("title"),
        place.optionalTexts("says"));
  }

  private static int packIndex(Fields place, int packs) {
    var index = place.count("pack", 0);
    if (index >= packs) {
      throw Fields.wrong(place.place() + ".pack", "is " + index + ", and there are " + packs + " packs, from 0");
    }
    return index;
  }

  private static Answered answered(Fields step, int packs) {
    onlyKnown(step, RecordFields.STEP);
    var kind = step.text("kind");
    if (!KINDS.contains(kind)) {
      throw Fields.wrong(step.place() + ".kind", "is none of check, task, finding, end");
    }
    return new Answered(stop(step), packIndex(step, packs), kind, step.count("way", 0), step.text("answer"),
        step.optionalText("reading"), step.optionalText("unit"), step.optionalText("expected"),
        step.optionalText("first"), step.optionalText("note"), step.time("at"), step.number("minutes"),
        step.texts("open"));
  }

  /** The names that the schema lists. */
  private static final class RecordFields {
    static final Set<String> RECORD = Set.of("format", "id", "from", "saves", "saved", "job", "notes", "packs", "steps",
        "undone", "now", "closed", "left", "why", "handedOut");
    static final Set<String> PACK = Set.of("tree", "title", "file", "digest", "revision", "system", "meter");
    static final Set<String> PLACE = Set.of("tree", "pack", "file", "step", "number", "title", "says");
    static final Set<String> STEP = Set.copyOf(List.of("tree", "pack", "step", "number", "title", "kind", "says", "way",
        "answer", "reading", "unit", "expected", "first", "note", "at", "minutes", "open"));

    private RecordFields() {}
  }
}
