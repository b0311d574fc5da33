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
import rungbook.library.Silencing;
import rungbook.library.pairs.PairProver;
import rungbook.library.solving.Prover;
import rungbook.proof.Proving;
import rungbook.proof.advice.Advice;
import rungbook.proof.comparison.Against;
import rungbook.proof.coverage.TreeFindings;
import rungbook.proof.pairs.PairBounds;
import rungbook.proof.plan.TreeClaims;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Proof;
import rungbook.report.EveryPairText;
import rungbook.report.ProofText;
import rungbook.report.SourceRenamer;
import rungbook.report.json.ProofJson;
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
  private final Optional<PairBounds> pairs;
  private final LibraryText text;
  private final ReadTrees trees;
  private final Optional<KeptProofs> kept;
  private final Map<String, String> treeBySystem = new LinkedHashMap<>();

  /** A tree that was proved, before its proof is printed. */
  private record Unprinted(Tree tree, Proving.Result result, String shown) {}

  /** @param pairs how far every two faults at once are followed; the cache is off then */
  BatchProof(Batch batch, Prover prover, Console terminal, Format format, ProofCache cache,
      Function<Proof, Optional<Against>> comparing, Optional<PairBounds> pairs) throws IOException {
    this.batch = batch;
    this.prover = prover;
    this.terminal = terminal;
    this.format = format;
    this.comparing = comparing;
    this.pairs = pairs;
    text = batch.read();
    trees = new ReadTrees(text);
    kept = cache.of(text, trees::tree);
  }

  /** In the order of their ids. */
  List<ProvedTree> prove(Progress progress) {
    List<ProvedTree> proved = pairs.isPresent() ? withPairs(pairs.get(), progress)
        : each(progress, this::prove);
    for (int i = 0; i < proved.size(); i++) {
      String id = asked().get(i);
      proved.get(i).system().ifPresent(system -> treeBySystem.putIfAbsent(system, id));
    }
    return proved;
  }

  private List<String> asked() {
    return text.in("trees/").keySet().stream().filter(id -> batch.asks(path(id))).toList();
  }

  private static String path(String id) {
    return "trees/" + id + ".md";
  }

  private <T> List<T> each(Progress progress, Function<String, T> prove) {
    var done = new ArrayList<T>();
    for (String id : asked()) {
      done.add(prove.apply(id));
      progress.step();
    }
    return done;
  }

  /** The pairs of all trees of a system are solved together, so no proof is printed before the last one is made. */
  private List<ProvedTree> withPairs(PairBounds bounds, Progress progress) {
    List<Unprinted> done = each(progress, id -> {
      Tree tree = trees.tree(id).orElseThrow();
      return new Unprinted(tree, prover.prove(tree, text, trees::tree), shown(id));
    });
    var every = PairProver.prove(
        done.stream().flatMap(one -> one.result().proved().stream()).toList(), text, trees::tree, bounds);
    return done.stream().map(one -> proved(one.tree(), one.result(), one.shown(),
        proof -> Optional.ofNullable(every.get(proof)))).toList();
  }

  private String shown(String id) {
    return terminal.shown(batch.fileOf(path(id)));
  }

  private ProvedTree prove(String id) {
    String path = path(id);
    String shown = shown(id);
    return kept.flatMap(earlier -> earlier.load(path, shown)).orElseGet(() -> {
      var others = new AskedTrees(trees::tree, this::claims);
      Tree tree = trees.tree(id).orElseThrow();
      ProvedTree proved = proved(tree, prover.prove(tree, text, others), shown, proof -> Optional.empty());
      kept.ifPresent(earlier -> earlier.save(path, shown, others.followed(), others.claimed(), proved));
      return proved;
    });
  }

  private Optional<TreeClaims> claims(String id) {
    return kept.isPresent() ? kept.get().claims(id) : trees.tree(id).map(TreeClaims::of);
  }

  private ProvedTree proved(Tree tree, Proving.Result result, String shown,
      Function<Proof, Optional<EveryPair>> every) {
    ProblemList found = Silencing.ofProof(tree, result);
    return new ProvedTree(
        result.proved().map(proof -> printed(proof, found, shown, every.apply(proof))), found,
        tree.system().map(Vocabulary::id), result.proved().map(TreeFindings::of));
  }

  private String printed(Proof proof, ProblemList found, String shown, Optional<EveryPair> every) {
    return switch (format) {
      case TEXT -> ProofText.of(proof, Advice.of(proof, found.shown()), comparing.apply(proof), shown,
          terminal.style()) + every.map(all -> EveryPairText.of(all, proof.tree(), terminal.style())).orElse("");
      case JSON -> ProofJson.item(new ProofJson.Of(shown, proof, comparing.apply(proof), every));
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
