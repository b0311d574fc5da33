package rungbook.web.record;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.text.Day;

/** A record as its page shows it: the answers in order, those after the last finding as repair and closing readings. */
public record RecordView(RecordEntry entry, FieldRecord record, List<Followed> packs, List<Line> before,
    List<Line> after, List<Line> undone, String received) implements SentView {

  /** An answer, with the name of its tree where that changes. */
  public record Line(String tree, FieldRecord.Answered step) {
    public String time() {
      return day(step.time());
    }
  }

  /** A pack as the record names it, and what this server knows of it. */
  public record Followed(FieldRecord.FollowedPack pack, PackMatch match) {}

  public static RecordView of(RecordEntry entry, FieldRecord record, String received) {
    int found = 0;
    for (int i = 0; i < record.steps().size(); i++) {
      found = record.steps().get(i).kind().equals("finding") ? i + 1 : found;
    }
    int end = found == 0 ? record.steps().size() : found;
    List<Followed> packs = IntStream.range(0, record.packs().size())
        .mapToObj(i -> new Followed(record.packs().get(i), entry.packs().get(i))).toList();
    return new RecordView(entry, record, packs, lines(record, record.steps().subList(0, end), ""),
        lines(record, record.steps().subList(end, record.steps().size()), lastTree(record, end)),
        lines(record, record.undone(), ""), received);
  }

  private static String lastTree(FieldRecord record, int end) {
    return record.packs().get(record.steps().get(end - 1).pack()).name();
  }

  private static List<Line> lines(FieldRecord record, List<FieldRecord.Answered> steps, String before) {
    var last = new String[] {before};
    return steps.stream().map(step -> {
      var tree = record.packs().get(step.pack()).name();
      var line = new Line(tree.equals(last[0]) ? "" : tree, step);
      last[0] = tree;
      return line;
    }).toList();
  }

  /** When it was closed; empty while the job goes on. */
  public String closed() {
    return record.closed().map(RecordView::day).orElse("");
  }

  public String saved() {
    return day(record.saved());
  }

  private static String day(Instant at) {
    return Day.andTime(at.atZone(ZoneId.systemDefault()));
  }
}
