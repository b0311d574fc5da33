package rungbook.web.record;

/** Results of practice as their page shows them. */
public record PracticeView(RecordEntry entry, PracticeResults results, String received) implements SentView {

  /** What this server knows of the page that was practiced on. */
  public PackMatch page() {
    return entry.packs().get(0);
  }
}
