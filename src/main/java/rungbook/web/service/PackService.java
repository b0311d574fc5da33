package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.pack.Pack;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.store.document.Revision;
import rungbook.tree.Target;

/** The packs of the current library; a pack is made again only when its tree changes. */
@ApplicationScoped
public class PackService {
  private final CompiledLibrary library;
  private final PerTree<Pack> made = new PerTree<>();

  PackService(CompiledLibrary library) {
    this.library = library;
  }

  /**
   * A pack as its tree's page offers it.
   *
   * @param digest the start of it in groups, as people compare it
   * @param others the trees whose packs its links lead to
   */
  public record Offer(String digest, List<TreeEntry> others) {}

  /** @param tree a sound one */
  public Pack of(CompiledTree tree) {
    return pack(tree, library.current(), revisions());
  }

  /** Every tree without errors. */
  public List<Pack> all() {
    var current = library.current();
    var revisions = revisions();
    return current.trees().stream().filter(CompiledTree::isSound).map(tree -> pack(tree, current, revisions)).toList();
  }

  /** Empty for a tree with errors. */
  public Optional<Offer> offer(CompiledTree tree) {
    return tree.isSound() ? Optional.of(new Offer(of(tree).shortDigest(), others(tree))) : Optional.empty();
  }

  private List<TreeEntry> others(CompiledTree tree) {
    var ids = tree.tree().steps().stream().flatMap(step -> step.ways().stream())
        .flatMap(way -> way.target() instanceof Target.ToTree other ? Stream.of(other.tree()) : Stream.empty())
        .collect(Collectors.toSet());
    return library.current().trees().stream()
        .filter(other -> ids.contains(other.tree().id()) && !other.path().equals(tree.path())).map(TreeEntry::of)
        .toList();
  }

  private Map<String, Integer> revisions() {
    return library.heads().stream().collect(Collectors.toMap(head -> head.path().text(), Revision::number));
  }

  private Pack pack(CompiledTree tree, Library library, Map<String, Integer> revisions) {
    var revision = Optional.ofNullable(revisions.get(tree.path())).map(String::valueOf);
    return made.of(tree, revision.orElse(""),
        () -> Pack.of(tree.tree(), new PackInput(library.shared(), library.text().pictures()),
            new Edition(revision, Optional.empty(), Optional.empty())));
  }
}
