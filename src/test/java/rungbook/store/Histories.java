package rungbook.store;

import java.util.List;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/** Whole histories, for documents of few revisions. */
public final class Histories {

  private Histories() {}

  /** All revisions of a document, oldest first; empty when there never was one. */
  public static List<Revision> all(Store store, DocumentPath path) {
    return store.history(path, Integer.MAX_VALUE, 10_000);
  }
}
