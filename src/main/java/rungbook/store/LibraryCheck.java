package rungbook.store;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import rungbook.store.document.Chain;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/** Checks the chains of all documents while their revisions are read once. */
final class LibraryCheck {
  private final Map<DocumentPath, Chain.Check> chains = new HashMap<>();
  private final Map<DocumentPath, Integer> broken = new TreeMap<>();

  /** @param revision the next of its document, oldest first */
  void add(Revision revision) {
    var chain = chain(revision.path());
    if (!broken.containsKey(revision.path()) && !chain.holds(revision)) {
      broken.put(revision.path(), chain.number());
    }
  }

  /**
   * The first broken or missing revision of each document that has one.
   *
   * @param heads the number of each document's newest revision, by path
   */
  Map<DocumentPath, Integer> broken(Map<String, Integer> heads) {
    heads.forEach((text, head) -> {
      var path = new DocumentPath(text);
      if (chain(path).number() <= head) {
        broken.putIfAbsent(path, chain(path).number());
      }
    });
    return broken;
  }

  private Chain.Check chain(DocumentPath path) {
    return chains.computeIfAbsent(path, first -> new Chain.Check());
  }
}
