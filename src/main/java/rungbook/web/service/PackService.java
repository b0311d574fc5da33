package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.Silencing;
import rungbook.library.solving.FactsFinder;
import rungbook.pack.LeftOut;
import rungbook.pack.Pack;
import rungbook.pack.PackedTree;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.advice.ProofSummary;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.store.document.DocumentPath;
import rungbook.text.English;
import rungbook.text.Sha256;
import rungbook.tree.Target;
import rungbook.web.http.Asker;

/** The packs of a library; a pack is made again only when its tree or a shared text changes. */
@ApplicationScoped
public class PackService {
  private final FactsFinder facts = new FactsFinder();
  private final PerTree<Pack> made = new PerTree<>();
  private final CompanyKey key;
  private final ProofService proofs;

  PackService(CompanyKey key, ProofService proofs) {
    this.key = key;
    this.proofs = proofs;
  }

  /**
   * A pack as its tree's page offers it.
   *
   * @param revision of the tree; 0 when that is not known
   * @param digest the start of it in groups, as people compare it
   * @param signed whether the server has a key to sign it with
   * @param others the trees whose packs its links lead to
   */
  public record Offer(int revision, String digest, boolean signed, List<TreeEntry> others) {}

  /** @param tree a sound one of the library */
  public Pack of(CompiledTree tree, CheckedLibrary library) {
    return pack(tree, library.library(), library.revisions(), shared(library.library()));
  }

  /**
   * With the tree's state and what its proof finds; waits for the proof.
   *
   * @param tree a sound one of the library
   */
  public Pack proved(CompiledTree tree, CheckedLibrary library, Asker asker) {
    var result = proofs.saved(tree, library.library(), asker);
    var state = ProofSummary.words(tree.problems(), result.proved(), Silencing.ofProof(tree.tree(), result).shown());
    return pack(tree, library.library(), edition(tree, library).proved(state));
  }

  /** Every tree without errors. */
  public List<Pack> all(CheckedLibrary library) {
    var revisions = library.revisions();
    var shared = shared(library.library());
    return library.library().trees().stream().filter(CompiledTree::isSound)
        .map(tree -> pack(tree, library.library(), revisions, shared)).toList();
  }

  /** Whether this server has a key to sign with. */
  public boolean isSigning() {
    return key.publicKey().isPresent();
  }

  /** Every tree without errors, to be packed together. */
  List<PackedTree> packed(CheckedLibrary library) {
    var text = library.library().text();
    return library.library().trees().stream().filter(CompiledTree::isSound)
        .map(tree -> new PackedTree(tree.tree(), facts.of(tree.tree(), text), edition(tree, library),
            of(tree, library).digest()))
        .toList();
  }

  /** Every tree with errors, and the first of them. */
  public List<LeftOut> leftOut(CheckedLibrary library) {
    return library.library().trees().stream().filter(tree -> !tree.isSound())
        .map(tree -> new LeftOut(tree.path(), TreeEntry.title(tree), why(tree))).toList();
  }

  private static String why(CompiledTree tree) {
    var errors = tree.problems().stream().filter(problem -> Wording.of(problem).severity() == Severity.ERROR).toList();
    if (errors.isEmpty()) {
      return "one of its ways on leads nowhere";
    }
    var first = errors.get(0);
    var more = errors.size() == 1 ? "" : "; " + English.counted(errors.size() - 1, "more error");
    var file = first.source().name().equals(tree.path()) ? "" : "`" + first.source().name() + "`, ";
    return file + "line " + first.place().line() + ": " + Wording.of(first).sentence(first) + more;
  }

  /** Empty for a tree with errors, and for one that the library does not have. */
  public Optional<Offer> offer(DocumentPath path, CheckedLibrary library) {
    return library.tree(path).filter(CompiledTree::isSound)
        .map(tree -> new Offer(library.revision(path), of(tree, library).shortDigest(),
            isSigning(), others(tree, library)));
  }

  private List<TreeEntry> others(CompiledTree tree, CheckedLibrary library) {
    var ids = tree.tree().steps().stream().flatMap(step -> step.ways().stream())
        .flatMap(way -> way.target() instanceof Target.ToTree other ? Stream.of(other.tree()) : Stream.empty())
        .collect(Collectors.toSet());
    return library.library().trees().stream()
        .filter(other -> ids.contains(other.tree().id()) && !other.path().equals(tree.path())).map(TreeEntry::of)
        .toList();
  }

  /** Which shared texts a pack is made with: each has the usual cautions in it, whatever its tree names. */
  private static String shared(Library library) {
    var texts = library.text().texts().subMap("shared/", "shared0").values().stream()
        .map(text -> text.name() + '\0' + text.text()).collect(Collectors.joining("\0"));
    return Sha256.hex(texts.getBytes(StandardCharsets.UTF_8));
  }

  private Pack pack(CompiledTree tree, Library library, Map<String, Integer> revisions, String shared) {
    var revision = Optional.ofNullable(revisions.get(tree.path())).map(String::valueOf);
    return made.of(tree, revision.orElse("") + ' ' + shared, () -> pack(tree, library, edition(revision)));
  }

  private static Edition edition(CompiledTree tree, CheckedLibrary library) {
    return edition(Optional.ofNullable(library.revisions().get(tree.path())).map(String::valueOf));
  }

  private static Edition edition(Optional<String> revision) {
    return new Edition(revision, Optional.empty(), Optional.empty());
  }

  private Pack pack(CompiledTree tree, Library library, Edition edition) {
    return Pack.of(tree.tree(), facts.of(tree.tree(), library.text()), material(library), edition);
  }

  static PackInput material(Library library) {
    return new PackInput(library.shared(), library.text().pictures());
  }
}
