package rungbook.web.record;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import rungbook.store.document.KeptRecord;
import rungbook.text.Day;

/**
 * A record, or results of practice, in a list.
 *
 * @param id its number on this server
 * @param recordId the id that the phone gave it; of results, one that this server made
 * @param kind {@code record} or {@code practice}
 * @param job its label; of results, the learner's name
 * @param closed of results always
 * @param answers how many; of results, the rounds
 * @param at the step where the work is, or ended; of results, the system
 * @param found what was found, or how it ended; of results, how many faults were found, and how many acts were unsafe
 * @param left what is open, off, bypassed, disconnected or set
 * @param packs of results, the page that was practiced on
 * @param flagged whether one of its packs is unknown or withdrawn, or its page of another edition
 */
public record RecordEntry(long id, String recordId, String kind, String job, Instant receivedAt, boolean closed,
    int answers, String at, List<String> found, List<String> left, List<PackMatch> packs, boolean flagged) {

  public static RecordEntry of(KeptRecord kept, FieldRecord record, Map<String, Integer> revisions) {
    var packs = kept.packs().stream().map(pack -> PackMatch.of(pack, revisions)).toList();
    return new RecordEntry(kept.id(), kept.recordId(), "record", record.job(), kept.receivedAt(),
        record.closed().isPresent(), record.steps().size(), record.now().name(), record.now().says(), record.left(),
        packs, packs.stream().anyMatch(PackMatch::flag));
  }

  /** @param page the page that was practiced on */
  public static RecordEntry of(KeptRecord kept, PracticeResults results, PackMatch page) {
    return new RecordEntry(kept.id(), kept.recordId(), "practice", results.name(), kept.receivedAt(), true,
        results.rounds().size(), results.system(), results.sum(), List.of(), List.of(page), page.flag());
  }

  /** The job, or where none was written the tree that it began with; of results, the learner or the system. */
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
