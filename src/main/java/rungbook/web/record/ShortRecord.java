package rungbook.web.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rungbook.web.record.FieldRecord.Answered;
import rungbook.web.record.FieldRecord.FollowedPack;
import rungbook.web.record.FieldRecord.Stop;

/** The short form of a record, as QR pictures hold it: lists in a fixed order instead of named fields. */
final class ShortRecord {
  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{24}");

  /** 1 January of the year 10000, in seconds: a phone's clock may be wrong, but a date has four digits for the year. */
  private static final long LATEST = 253_402_300_800L;

  private ShortRecord() {}

  static FieldRecord read(Fields record) {
    if (record.count("f", 1) != 1) {
      throw Fields.wrong("f", "is not 1, which is all that this server reads");
    }
    var packs = record.each("p", 1, ShortRecord::pack);
    var steps = steps(record, packs);
    var closed = seconds(record.node().path("c"), "c");
    var now = steps.get(steps.size() - 1).at();
    return new FieldRecord(RecordReader.id(record, "i"), record.count("n", 1), steps.get(steps.size() - 1).time(),
        record.text("j"), record.text("t"), packs, steps, List.of(),
        new Stop(now.tree(), record.text("w"), "", "", List.of()),
        closed == 0 ? Optional.empty() : Optional.of(Instant.ofEpochSecond(closed)), record.texts("o"),
        record.text("y"), true);
  }

  private static FollowedPack pack(Fields.Item item) {
    var values = values(item, 3);
    if (!DIGEST.matcher(values.get(1)).matches()) {
      throw Fields.wrong(item.place() + "[1]", "is not 24 hexadecimal digits");
    }
    return new FollowedPack(values.get(0), "", values.get(1), values.get(2), "", "");
  }

  private static List<String> values(Fields.Item item, int count) {
    return Fields.each(item.node(), item.place(), count, value -> Fields.text(value.node(), value.place()));
  }

  private static List<Answered> steps(Fields record, List<FollowedPack> packs) {
    var all = new ArrayList<Answered>();
    long[] at = {seconds(record.node().path("b"), "b")};
    record.each("s", 1, item -> {
      if (!item.node().isArray() || item.node().size() < 5) {
        throw Fields.wrong(item.place(), "is no list of 5 or more");
      }
      at[0] += (int) difference(item.node().get(4), item.place() + "[4]");
      return all.add(answered(item, packs, Instant.ofEpochSecond(Math.max(0, Math.min(LATEST - 1, at[0])))));
    });
    return List.copyOf(all);
  }

  private static Answered answered(Fields.Item item, List<FollowedPack> packs, Instant at) {
    var pack = Fields.count(item.node().get(0), item.place() + "[0]", 0);
    if (pack >= packs.size()) {
      throw Fields.wrong(item.place() + "[0]", "is " + pack + ", and there are " + packs.size() + " packs, from 0");
    }
    var stop = new Stop(packs.get(pack).tree(), text(item, 1), "", "", List.of());
    return new Answered(stop, pack, "", Fields.count(item.node().get(2), item.place() + "[2]", 0), text(item, 3),
        text(item, 5), text(item, 6), "", "", text(item, 7), at, 0, List.of());
  }

  /** Empty where the list is shorter. */
  private static String text(Fields.Item item, int index) {
    return index < item.node().size() ? Fields.text(item.node().get(index), item.place() + "[" + index + "]") : "";
  }

  private static long difference(JsonNode value, String place) {
    if (!value.isIntegralNumber() || !value.canConvertToInt()) {
      throw Fields.wrong(place, "is no whole number");
    }
    return value.longValue();
  }

  private static long seconds(JsonNode value, String place) {
    if (!value.isIntegralNumber() || !value.canConvertToLong() || value.longValue() < 0
        || value.longValue() >= LATEST) {
      throw Fields.wrong(place, "is no time in seconds");
    }
    return value.longValue();
  }
}
