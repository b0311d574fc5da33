package rungbook.store;

import java.util.List;
import java.util.Optional;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/** A store without a database, whose documents are read late or never. */
public final class LateStore extends Store {

  private volatile long changes;
  private volatile List<Revision> heads = List.of();
  public volatile Runnable before = () -> {};

  public LateStore() {
    super(null);
  }

  /** Has these newest revisions from now on, and tells who listens. */
  public void change(List<Revision> newest) {
    heads = newest;
    changes++;
    tellListeners();
  }

  @Override
  public long changes() {
    return changes;
  }

  @Override
  public List<Revision> heads() {
    before.run();
    return heads;
  }

  @Override
  public Optional<Revision> head(DocumentPath path) {
    return heads.stream().filter(head -> head.path().equals(path)).findFirst();
  }
}
