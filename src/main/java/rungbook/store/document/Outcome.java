package rungbook.store.document;

/** What became of a save. Nothing is lost either way. */
public sealed interface Outcome {

  /** It is now the document's newest revision. */
  record Saved(Revision revision) implements Outcome {}

  /** The same content was the newest revision already: no revision was added. */
  record Unchanged(Revision revision) implements Outcome {}

  /**
   * Somebody else saved first.
   *
   * @param current what they saved
   * @param draft the text of this save, kept
   */
  record Conflict(Revision current, Draft draft) implements Outcome {}

  /** Somebody else saved first, so the document was not removed. There is no text to keep. */
  record NotRemoved(Revision current) implements Outcome {}
}
