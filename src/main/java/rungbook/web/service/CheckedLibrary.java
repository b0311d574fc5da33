package rungbook.web.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/**
 * A library that was checked, as one reader sees it from beginning to end.
 *
 * @param heads the revisions that it was compiled from
 * @param isNewest whether nothing was saved since; otherwise a newer one is being checked
 */
public record CheckedLibrary(Library library, List<Revision> heads, boolean isNewest) {

  public Optional<CompiledTree> tree(DocumentPath path) {
    return library.trees().stream().filter(tree -> tree.path().equals(path.text())).findFirst();
  }

  /** The number of each document's revision, by path. */
  public Map<String, Integer> revisions() {
    return heads.stream().collect(Collectors.toMap(head -> head.path().text(), Revision::number));
  }

  /** The number of one document's revision; 0 when it is not in this library. */
  public int revision(DocumentPath path) {
    return heads.stream().filter(head -> head.path().equals(path)).mapToInt(Revision::number).findFirst().orElse(0);
  }
}
