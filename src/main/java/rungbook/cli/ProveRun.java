package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rungbook.library.CompiledTree;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.Prover;
import rungbook.library.Silencing;
import rungbook.library.earlier.EarlierTrees;
import rungbook.proof.Proving;
import rungbook.proof.advice.Advice;
import rungbook.proof.comparison.Against;
import rungbook.proof.coverage.LibraryCoverage;
import rungbook.proof.coverage.SystemCoverage;
import rungbook.proof.coverage.TreeFindings;
import rungbook.proof.report.Proof;
import rungbook.report.CoverageText;
import rungbook.report.ProofJson;
import rungbook.report.ProofText;
import rungbook.report.Report;
import rungbook.report.Style;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Silenced;
import rungbook.tree.Tree;

/**
 * The result of a {@code prove} run.
 *
 * @param library what the trees of each library find together, where several were proved
 * @param report the problems that the proofs found; {@code check} reports the rest
 */
record ProveRun(List<Proved> proofs, List<SystemCoverage> library, Report report) {

  /** A proof, what to do about it, and the file it is of. */
  private record Proved(String file, Proof proof, Advice advice, Optional<Against> against) {}

  /** @param earlier what the proofs are compared with */
  static ProveRun of(Collection<Path> files, Console terminal, int samples, Optional<Path> earlier)
      throws IOException {
    var proofs = new ArrayList<Proved>();
    var library = new ArrayList<SystemCoverage>();
    var problems = new ArrayList<Problem>();
    var silenced = new ArrayList<Silenced>();
    try (Progress progress = Progress.of(files.size(), terminal)) {
      Prover prover = new Prover(samples);
      for (Batch batch : Batch.of(files, terminal.home())) {
        var ofBatch = new ArrayList<Proved>();
        ProblemList found = prove(batch, prover, terminal, ofBatch, progress,
            comparing(batch, earlier, terminal, samples));
        proofs.addAll(ofBatch);
        library.addAll(together(ofBatch));
        problems.addAll(found.shown());
        silenced.addAll(found.silenced());
      }
    }
    return new ProveRun(proofs, library, new Report(files.size(), problems, silenced));
  }

  private static List<SystemCoverage> together(List<Proved> proofs) {
    return proofs.size() < 2 ? List.of()
        : LibraryCoverage.of(proofs.stream().map(one -> TreeFindings.of(one.proof())).toList());
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

  private static ProblemList prove(Batch batch, Prover prover, Console terminal, List<Proved> proofs,
      Progress progress, Function<Proof, Optional<Against>> comparing) throws IOException {
    LibraryText text = batch.read();
    Map<String, CompiledTree> trees = new LinkedHashMap<>();
    LibraryCompiler.trees(text, LibraryCompiler.sharedAsNeeded(text), id -> true)
        .forEachOrdered(tree -> trees.put(tree.tree().id(), tree));
    Function<String, Optional<Tree>> others = id -> Optional.ofNullable(trees.get(id)).map(CompiledTree::tree);
    var found = new ArrayList<ProblemList>();
    for (CompiledTree tree : trees.values()) {
      if (batch.asks(tree.path())) {
        Proving.Result result = prover.prove(tree.tree(), text, others);
        ProblemList ofTree = Silencing.ofProof(tree.tree(), result);
        found.add(ofTree);
        result.proved().ifPresent(proof -> proofs.add(
            new Proved(terminal.shown(batch.fileOf(tree.path())), proof, Advice.of(proof, ofTree.shown()),
                comparing.apply(proof))));
        progress.step();
      }
    }
    found.add(ProblemList.of(prover.systemProblems(trees.values().stream().filter(tree -> batch.asks(tree.path()))
        .map(CompiledTree::tree).toList(), text)));
    return new SourceRenamer(name -> terminal.shown(batch.fileOf(name))).of(ProblemList.join(found));
  }

  String print(Format format, Style style) {
    return switch (format) {
      case JSON -> ProofJson.of(
          proofs.stream().map(one -> new ProofJson.Of(one.file(), one.proof(), one.against())).toList(), library, report);
      case SARIF -> Format.SARIF.print(report, style);
      case TEXT -> text(style);
    };
  }

  private String text(Style style) {
    var text = new StringBuilder();
    proofs.forEach(
        one -> text.append(ProofText.of(one.proof(), one.advice(), one.against(), one.file(), style)));
    text.append(CoverageText.of(library, style));
    return text.append(Format.TEXT.print(report, style)).toString();
  }
}
