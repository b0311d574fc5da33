package rungbook.web.record;

/** What was received, as its page shows it. */
public sealed interface SentView permits RecordView, PracticeView {

  RecordEntry entry();

  /** The text as it came. */
  String received();
}
