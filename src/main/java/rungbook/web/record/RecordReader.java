package rungbook.web.record;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import rungbook.web.record.FieldRecord.Answered;
import rungbook.web.record.FieldRecord.FollowedPack;
import rungbook.web.record.FieldRecord.Stop;

/** Reads a record's JSON. What the published schema takes is read, and nothing else. */
final class RecordReader {
  static final String FORMAT = "rungbook-record/1";
  private static final Pattern ID = Pattern.compile("[0-9a-f]{16}");
  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");
  private static final Set<String> KINDS = Set.of("check", "task", "finding", "end");

  private RecordReader() {}

  /** @param whole in full, or the short form of QR pictures */
  static FieldRecord read(Fields whole) {
    return whole.has("f") ? ShortRecord.read(whole) : full(whole);
  }

  static String id(Fields record, String name) {
    return record.text(name, ID, "not 16 hexadecimal digits");
  }

  private static FieldRecord full(Fields record) {
    if (!record.text("format").equals(FORMAT)) {
      throw Fields.wrong("format", "is not `" + FORMAT + "`, which is all that this server reads");
    }
    record.onlyKnown(RecordFields.RECORD, "a record");
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

  private static FollowedPack pack(Fields pack) {
    pack.onlyKnown(RecordFields.PACK, "a record");
    pack.text("file");
    return new FollowedPack(pack.text("tree"), pack.text("title"),
        pack.text("digest", DIGEST, "not 64 hexadecimal digits"), pack.text("revision"), pack.optionalText("system"),
        pack.text("meter"));
  }

  private static Stop now(Fields place, int packs) {
    place.onlyKnown(RecordFields.PLACE, "a record");
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
    step.onlyKnown(RecordFields.STEP, "a record");
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
