package rungbook.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rungbook.cli.cache.AskedTrees;
import rungbook.cli.cache.KeptProofs;
import rungbook.cli.cache.ProofCache;
import rungbook.cli.cache.ProvedTree;
import rungbook.cli.cache.ReadTrees;
import rungbook.library.LibraryText;
import rungbook.library.Prover;
import rungbook.library.Silencing;
import rungbook.proof.Proving;
import rungbook.proof.advice.Advice;
import rungbook.proof.comparison.Against;
import rungbook.proof.coverage.TreeFindings;
import rungbook.proof.plan.TreeClaims;
import rungbook.proof.report.Proof;
import rungbook.report.ProofJson;
import rungbook.report.ProofText;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.system.Vocabulary;
import rungbook.tree.Tree;

/** Proves the trees of one library that are asked for, as far as the cache does not have their proofs. */
final class BatchProof {

  private final Batch batch;
  private final Prover prover;
  private final Console terminal;
  private final Format format;
  private final Function<Proof, Optional<Against>> comparing;
  private final LibraryText text;
  private final ReadTrees trees;
  private final Optional<KeptProofs> kept;
  private final Map<String, String> treeBySystem = new LinkedHashMap<>();

  BatchProof(Batch batch, Prover prover, Console terminal, Format format, ProofCache cache,
      Function<Proof, Optional<Against>> comparing) throws IOException {
    this.batch = batch;
    this.prover = prover;
    this.terminal = terminal;
    this.format = format;
    this.comparing = comparing;
    text = batch.read();
    trees = new ReadTrees(text);
    kept = cache.of(text, trees::tree);
  }

  /** In the order of their ids. */
  List<ProvedTree> prove(Progress progress) {
    var proved = new ArrayList<ProvedTree>();
    for (String id : text.in("trees/").keySet()) {
      String path = "trees/" + id + ".md";
      if (batch.asks(path)) {
        ProvedTree tree = prove(id, path, terminal.shown(batch.fileOf(path)));
        tree.system().ifPresent(system -> treeBySystem.putIfAbsent(system, id));
        proved.add(tree);
        progress.step();
      }
    }
    return proved;
  }

  private ProvedTree prove(String id, String path, String shown) {
    return kept.flatMap(earlier -> earlier.load(path, shown)).orElseGet(() -> {
      var others = new AskedTrees(trees::tree, this::claims);
      Tree tree = trees.tree(id).orElseThrow();
      ProvedTree proved = proved(tree, prover.prove(tree, text, others), shown);
      kept.ifPresent(earlier -> earlier.save(path, shown, others.followed(), others.claimed(), proved));
      return proved;
    });
  }

  private Optional<TreeClaims> claims(String id) {
    return kept.isPresent() ? kept.get().claims(id) : trees.tree(id).map(TreeClaims::of);
  }

  private ProvedTree proved(Tree tree, Proving.Result result, String shown) {
    ProblemList found = Silencing.ofProof(tree, result);
    return new ProvedTree(result.proved().map(proof -> printed(proof, found, shown)), found,
        tree.system().map(Vocabulary::id), result.proved().map(TreeFindings::of));
  }

  private String printed(Proof proof, ProblemList found, String shown) {
    return switch (format) {
      case TEXT -> ProofText.of(proof, Advice.of(proof, found.shown()), comparing.apply(proof), shown,
          terminal.style());
      case JSON -> ProofJson.item(new ProofJson.Of(shown, proof, comparing.apply(proof)));
      case SARIF -> "";
    };
  }

  /** What the proofs found wrong with the trees and their systems, under the names of the files as people see them. */
  ProblemList problems(List<ProvedTree> proved) {
    List<Problem> ofSystems = treeBySystem.entrySet().stream()
        .flatMap(one -> systemProblems(one.getKey(), one.getValue()).stream()).toList();
    List<ProblemList> found = Stream.concat(proved.stream().map(ProvedTree::found),
        Stream.of(ProblemList.of(ofSystems))).toList();
    return new SourceRenamer(name -> terminal.shown(batch.fileOf(name))).of(ProblemList.join(found));
  }

  private List<Problem> systemProblems(String system, String tree) {
    return kept.flatMap(earlier -> earlier.systemProblems(system)).orElseGet(() -> {
      List<Problem> problems = prover.systemProblems(trees.tree(tree).stream().toList(), text);
      kept.ifPresent(earlier -> earlier.saveSystemProblems(system, problems));
      return problems;
    });
  }
}
