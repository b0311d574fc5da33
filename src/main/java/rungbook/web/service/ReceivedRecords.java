package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;
import rungbook.pack.Pack;
import rungbook.pack.practice.PracticePage;
import rungbook.store.FieldRecords;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.KeptRecord;
import rungbook.store.document.KeptRecord.IssuedPack;
import rungbook.store.document.KeptRecord.KeptPack;
import rungbook.store.document.StoreLimits;
import rungbook.web.http.ProblemException;
import rungbook.web.practice.PracticeService;
import rungbook.web.record.FieldRecord;
import rungbook.web.record.PackMatch;
import rungbook.web.record.PracticeResults;
import rungbook.web.record.PracticeView;
import rungbook.web.record.RecordEntry;
import rungbook.web.record.RecordFault;
import rungbook.web.record.RecordView;
import rungbook.web.record.Sent;
import rungbook.web.record.SentView;

/**
 * Field records that come back from the field, matched to the packs that this server handed out, and results of
 * practice, matched to the library's practice pages.
 */
@ApplicationScoped
public class ReceivedRecords {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private final FieldRecords records;
  private final CompiledLibrary library;
  private final PracticeService practice;

  ReceivedRecords(FieldRecords records, CompiledLibrary library, PracticeService practice) {
    this.records = records;
    this.library = library;
    this.practice = practice;
  }

  /** @param isNew whether the same text was not received before */
  public record Received(RecordEntry entry, boolean isNew) {}

  /** Reads and keeps a record; throws a problem that says what is wrong with one that cannot be read. */
  public Received receive(String text) {
    var content = Requests.utf8(text);
    if (content.length > StoreLimits.RECORD) {
      throw ProblemException.tooLarge("a field record has at most " + (StoreLimits.RECORD >> 20) + " MB",
          "send one record at a time");
    }
    try {
      var sent = Sent.read(text);
      var kept = records.receive(new FieldRecords.Arrival(sent.id(), sent.saves(), sent.isShort(),
          sent.packs().stream().map(ReceivedRecords::named).toList(), content));
      return new Received(entry(kept.kept(), sent, library.checked()), kept.isNew());
    } catch (RecordFault fault) {
      throw ProblemException.badRequest(fault.says(), fault.hint());
    }
  }

  private static KeptPack named(FieldRecord.FollowedPack pack) {
    return new KeptPack(pack.tree(), pack.digest(), pack.revision(), Optional.empty());
  }

  /** The newest state of each record, the last that came first. */
  public List<RecordEntry> newest() {
    return entries(records.newest(StoreLimits.RECORDS_COUNT));
  }

  /** @param tree its id */
  public List<RecordEntry> newest(String tree) {
    return entries(records.newest(tree, StoreLimits.RECORDS_COUNT));
  }

  private List<RecordEntry> entries(List<KeptRecord> kept) {
    var checked = library.checked();
    return kept.stream().map(record -> entry(record, read(record), checked)).toList();
  }

  private RecordEntry entry(KeptRecord kept, Sent sent, CheckedLibrary checked) {
    var revisions = checked.revisions();
    if (sent instanceof FieldRecord record) {
      return RecordEntry.of(kept, record, revisions);
    }
    var results = (PracticeResults) sent;
    var page = practice.of(results.system(), checked.library()).map(PracticePage::digest);
    return RecordEntry.of(kept, results, PackMatch.of(results, page, revisions));
  }

  public SentView view(long id) {
    var kept = records.find(id).orElseThrow(() -> ProblemException.notFound("there is no field record " + id,
        "choose one from the list of field records"));
    return view(kept, read(kept));
  }

  private SentView view(KeptRecord kept, Sent sent) {
    var entry = entry(kept, sent, library.checked());
    return sent instanceof FieldRecord record ? RecordView.of(entry, record, kept.text())
        : new PracticeView(entry, (PracticeResults) sent, kept.text());
  }

  /** What is kept was read before it was kept. */
  private static Sent read(KeptRecord kept) {
    return Sent.read(kept.text());
  }

  /** Remembers packs that are handed out. A pack is handed out even when that cannot be written down. */
  public void handedOut(List<Pack> packs, CheckedLibrary checked) {
    try {
      packs.forEach(pack -> {
        var path = new DocumentPath("trees/" + pack.tree() + ".md");
        records.issued(pack.digest(), new IssuedPack(path, checked.revision(path)));
      });
    } catch (RuntimeException failed) {
      LOG.warn("a pack was handed out, but that could not be written down: its records will be of an unknown pack",
          failed);
    }
  }
}
