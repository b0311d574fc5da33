package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungbook.cli.cache.ProofCache;
import rungbook.cli.cache.ProvedTree;
import rungbook.library.earlier.EarlierTrees;
import rungbook.library.solving.Prover;
import rungbook.proof.comparison.Against;
import rungbook.proof.coverage.LibraryCoverage;
import rungbook.proof.coverage.SystemCoverage;
import rungbook.proof.pairs.PairBounds;
import rungbook.proof.report.Proof;
import rungbook.report.CoverageText;
import rungbook.report.Report;
import rungbook.report.Style;
import rungbook.report.json.ProofJson;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Silenced;

/**
 * The result of a {@code prove} run.
 *
 * @param proofs as they are printed
 * @param library what the trees of each library find together, where several were proved
 * @param report the problems that the proofs found; {@code check} reports the rest
 */
record ProveRun(List<String> proofs, List<SystemCoverage> library, Report report) {

  /**
   * What a run asks of proofs beyond the proofs themselves. None of it is kept for the next run.
   *
   * @param earlier what they are compared with
   * @param pairs how far every two faults at once are followed
   */
  record Extras(Optional<Path> earlier, Optional<PairBounds> pairs) {

    boolean any() {
      return earlier.isPresent() || pairs.isPresent();
    }
  }

  /**
   * @param format in which {@link #print} will print it
   */
  static ProveRun of(Collection<Path> files, Console terminal, int samples, Format format, Extras extras)
      throws IOException {
    var proofs = new ArrayList<String>();
    var library = new ArrayList<SystemCoverage>();
    var problems = new ArrayList<Problem>();
    var silenced = new ArrayList<Silenced>();
    var cache = ProofCache.of(terminal.cache(), samples, format.name(), terminal.style());
    try (Progress progress = Progress.of(files.size(), terminal)) {
      Prover prover = new Prover(samples, cache);
      for (Batch batch : Batch.of(files, terminal.home())) {
        var proving = new BatchProof(batch, prover, terminal, format, cache,
            comparing(batch, extras.earlier(), terminal, samples), extras.pairs());
        List<ProvedTree> proved = proving.prove(progress);
        proved.forEach(tree -> tree.printed().ifPresent(proofs::add));
        library.addAll(together(proved));
        ProblemList found = proving.problems(proved);
        problems.addAll(found.shown());
        silenced.addAll(found.silenced());
      }
      prover.keepReadings();
    }
    cache.trim();
    return new ProveRun(proofs, library, new Report(files.size(), problems, silenced));
  }

  private static List<SystemCoverage> together(List<ProvedTree> trees) {
    boolean isOne = trees.stream().filter(tree -> tree.printed().isPresent()).count() < 2;
    return isOne ? List.of() : LibraryCoverage.of(trees.stream().flatMap(tree -> tree.covered().stream()).toList());
  }

  /** Compares a proof with that of the earlier text, if there is one. */
  private static Function<Proof, Optional<Against>> comparing(Batch batch, Optional<Path> earlier, Console terminal,
      int samples) throws IOException {
    if (earlier.isEmpty()) {
      return proof -> Optional.empty();
    }
    EarlierTrees trees = batch.earlier(earlier.get());
    // a prover of its own, since an earlier library may have another system of the same name
    Prover prover = new Prover(samples);
    return proof -> Optional.of(trees.compare(proof, terminal.shown(earlier.get()), prover));
  }

  String print(Format format, Style style) {
    return switch (format) {
      case JSON -> ProofJson.of(proofs, library, report);
      case SARIF -> Format.SARIF.print(report, style);
      case TEXT -> String.join("", proofs) + CoverageText.of(library, style) + Format.TEXT.print(report, style);
    };
  }
}
