package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;
import rungbook.library.LibraryCompiler;
import rungbook.library.earlier.EarlierTrees;
import rungbook.proof.comparison.Against;
import rungbook.proof.report.Proof;
import rungbook.source.Source;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.web.http.Asker;
import rungbook.web.http.ProblemException;

/** Compares the proof of a tree with that of an earlier revision of it, in the library of today. */
@ApplicationScoped
public class ComparisonService {
  /** The page of a proof does not wait longer for what it did not ask for. */
  private static final Duration UNASKED = Duration.ofSeconds(3);
  private static final Duration ASKED = Duration.ofSeconds(35);
  private final Store store;
  private final ProofService proofs;

  ComparisonService(Store store, ProofService proofs) {
    this.store = store;
    this.proofs = proofs;
  }

  /** With a revision that somebody chose. */
  public Against chosen(DocumentPath tree, int number, Proof now, CheckedLibrary checked, Asker asker) {
    var revision = Requests.revision(store, tree, number);
    if (!revision.isThere()) {
      throw ProblemException.badRequest("revision " + number + " removed `" + tree + "`, so it has no text to prove",
          "choose another one from its history");
    }
    return compare(revision, now, checked, asker, ASKED);
  }

  /** With the last revision before the one that was proved; empty for a first revision. */
  public Optional<Against> last(DocumentPath tree, Proof now, CheckedLibrary checked, Asker asker) {
    var before = store.history(tree, Math.max(1, checked.revision(tree)), Requests.REVISIONS_AT_ONCE);
    return before.stream().filter(Revision::isThere).reduce((first, second) -> second)
        .map(revision -> compare(revision, now, checked, asker, UNASKED));
  }

  private Against compare(Revision earlier, Proof now, CheckedLibrary checked, Asker asker, Duration patience) {
    var name = "revision " + earlier.number();
    var path = earlier.path();
    var tree = LibraryCompiler.compile(CompiledLibrary.id(path), new Source(path.text(), earlier.text()),
        checked.library());
    try {
      var before = proofs.earlier(tree, earlier.number(), checked.library(), asker, patience);
      return EarlierTrees.compare(before, now, name);
    } catch (ProblemException notInTime) {
      return Against.not(name, notInTime.report().detail() + "; " + notInTime.report().hint());
    }
  }
}
