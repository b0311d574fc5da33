package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;
import rungbook.pack.Pack;
import rungbook.store.FieldRecords;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.KeptRecord;
import rungbook.store.document.KeptRecord.IssuedPack;
import rungbook.store.document.KeptRecord.KeptPack;
import rungbook.store.document.StoreLimits;
import rungbook.web.http.ProblemException;
import rungbook.web.record.FieldRecord;
import rungbook.web.record.RecordEntry;
import rungbook.web.record.RecordFault;
import rungbook.web.record.RecordReader;
import rungbook.web.record.RecordText;
import rungbook.web.record.RecordView;

/** Field records that come back from the field, matched to the packs that this server handed out. */
@ApplicationScoped
public class ReceivedRecords {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private final FieldRecords records;
  private final CompiledLibrary library;

  ReceivedRecords(FieldRecords records, CompiledLibrary library) {
    this.records = records;
    this.library = library;
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
      var record = RecordReader.read(RecordText.json(text));
      var kept = records.receive(new FieldRecords.Arrival(record.id(), record.saves(), record.isShort(),
          record.packs().stream().map(ReceivedRecords::named).toList(), content));
      return new Received(RecordEntry.of(kept.kept(), record, library.checked().revisions()), kept.isNew());
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
    var revisions = library.checked().revisions();
    return kept.stream().map(record -> RecordEntry.of(record, read(record), revisions)).toList();
  }

  public RecordView view(long id) {
    var kept = records.find(id).orElseThrow(() -> ProblemException.notFound("there is no field record " + id,
        "choose one from the list of field records"));
    return view(kept, read(kept));
  }

  private RecordView view(KeptRecord kept, FieldRecord record) {
    return RecordView.of(RecordEntry.of(kept, record, library.checked().revisions()), record, kept.text());
  }

  /** What is kept was read before it was kept. */
  private static FieldRecord read(KeptRecord kept) {
    return RecordReader.read(RecordText.json(kept.text()));
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
