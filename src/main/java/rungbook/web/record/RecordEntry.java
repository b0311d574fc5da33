package rungbook.web.record;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import rungbook.store.document.KeptRecord;
import rungbook.text.Day;

/**
 * A record in a list.
 *
 * @param id its number on this server
 * @param recordId the id that the phone gave it
 * @param at the step where the work is, or ended
 * @param found what was found, or how it ended
 * @param left what is open, off, bypassed, disconnected or set
 * @param flagged whether one of its packs is unknown or withdrawn
 */
public record RecordEntry(long id, String recordId, String job, Instant receivedAt, boolean closed, int answers,
    String at, List<String> found, List<String> left, List<PackMatch> packs, boolean flagged) {

  public static RecordEntry of(KeptRecord kept, FieldRecord record, Map<String, Integer> revisions) {
    var packs = kept.packs().stream().map(pack -> PackMatch.of(pack, revisions)).toList();
    return new RecordEntry(kept.id(), kept.recordId(), record.job(), kept.receivedAt(), record.closed().isPresent(),
        record.steps().size(), record.now().name(), record.now().says(), record.left(), packs,
        packs.stream().anyMatch(PackMatch::flag));
  }

  /** The job, or where none was written the tree that it began with. */
  public String title() {
    return job.isBlank() ? packs.get(0).tree() : job;
  }

  public String href() {
    return "/records/" + id;
  }

  /** When it came, in the machine's own zone. */
  public String day() {
    return Day.andTime(receivedAt.atZone(ZoneId.systemDefault()));
  }
}
