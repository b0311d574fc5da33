package rungbook.tree.reader;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.ParsedWay;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.tree.Shared;
import rungbook.tree.Target;

/** Resolves the links of ways on: to a step, out of a fragment, or to another tree. */
final class LinkResolver {

  static final Code EXIT_UNKNOWN = Code.of("exit-unknown");
  static final Code EXIT_WITHOUT_WAY = Code.of("exit-without-way");
  static final Code UNKNOWN_STEP = Code.of("unknown-step");
  static final Code UNKNOWN_TREE = Code.of("unknown-tree");
  static final Code WAY_NOT_TO_A_STEP = Code.of("way-not-to-a-step");
  static final Code WAY_TO_CHAPTER = Code.of("way-to-chapter");

  private static final int MOST_SUGGESTIONS = 20;

  private final Shared shared;
  private final Problems problems;
  /** Keyed by identity: comparing scopes by value would compare whole files. */
  private final IdentityHashMap<Scope, Integer> firstStep = new IdentityHashMap<>();
  private final IdentityHashMap<UnresolvedStep, Scope> taken = new IdentityHashMap<>();
  private int suggestions;

  LinkResolver(List<UnresolvedStep> unresolved, Shared shared, Problems problems) {
    this.shared = shared;
    this.problems = problems;
    for (int i = 0; i < unresolved.size(); i++) {
      Scope scope = unresolved.get(i).scope();
      if (firstStep.putIfAbsent(scope, i) == null) {
        scope.taker().ifPresent(taker -> taken.put(taker, scope));
      }
    }
  }

  /** The target of a way on, as written in a scope. */
  Target target(Scope scope, ParsedWay way) {
    String target = way.target();
    if (target.startsWith("#")) {
      return stepTarget(scope, target.substring(1), way.targetSpan());
    }
    int hash = target.indexOf('#');
    String file = hash < 0 ? target : target.substring(0, hash);
    return file.endsWith(".md") ? treeTarget(scope, file, hash < 0 ? "" : target.substring(hash + 1), way.targetSpan())
        : nowhere(Problem.at(WAY_NOT_TO_A_STEP, source(scope), way.targetSpan()).with("target", target));
  }

  /** The words of a way on. Where it leaves a fragment, those of the including step: they name what comes next. */
  String label(Scope scope, ParsedWay way) {
    Optional<String> exit = Optional.of(way.target()).filter(target -> target.startsWith("#"))
        .flatMap(target -> Optional.ofNullable(scope.exitBySlug().get(target.substring(1))));
    return scope.taker()
        .flatMap(taker -> exit.flatMap(name -> exitWay(taker, name)).map(out -> label(taker.scope(), out)))
        .orElse(way.label());
  }

  /** The first step of the fragment that a step includes. */
  Target entry(UnresolvedStep taker) {
    return Optional.ofNullable(taken.get(taker)).map(firstStep::get).<Target>map(Target.ToStep::new)
        .orElse(new Target.Nowhere());
  }

  private Target stepTarget(Scope scope, String slug, Span span) {
    Integer index = scope.indexBySlug().get(slug);
    if (index != null) {
      return new Target.ToStep(index);
    }
    String exit = scope.exitBySlug().get(slug);
    if (exit != null) {
      return scope.taker().map(taker -> exitTarget(taker, exit)).orElse(new Target.Nowhere());
    }
    return scope.chapters().contains(slug) ? chapter(scope, slug, span)
        : nowhere(Problem.at(UNKNOWN_STEP, source(scope), span).with("target", slug).near("#" + slug,
            nearestStep(scope, slug)));
  }

  /**
   * A heading that is not a step. If a word after a fence is misspelled, that is already reported and may be the
   * reason.
   */
  private Target chapter(Scope scope, String slug, Span span) {
    return !scope.document().misspelled().isEmpty() ? new Target.Nowhere()
        : nowhere(Problem.at(WAY_TO_CHAPTER, source(scope), span).with("target", slug));
  }

  /** Leaves a fragment by the including step's way on for this exit. */
  private Target exitTarget(UnresolvedStep taker, String exit) {
    return exitWay(taker, exit).map(way -> target(taker.scope(), way)).orElse(new Target.Nowhere());
  }

  private static Optional<ParsedWay> exitWay(UnresolvedStep taker, String exit) {
    return taker.section().ways().stream().filter(way -> Names.key(way.answer()).equals(exit)).findFirst();
  }

  private Target treeTarget(Scope scope, String file, String step, Span span) {
    String id = file.substring(0, file.length() - ".md".length());
    if (shared.trees().contains(id)) {
      return new Target.ToTree(id, Optional.of(step).filter(slug -> !slug.isEmpty()));
    }
    return nowhere(Problem.at(UNKNOWN_TREE, source(scope), span).with("tree", file).near(file,
        Nearest.to(id, shared.trees()).map(name -> name + ".md")));
  }

  private Target nowhere(Problem problem) {
    problems.add(problem);
    return new Target.Nowhere();
  }

  /** Limited: comparing every missing step with every other would take minutes in a file full of broken links. */
  private Optional<String> nearestStep(Scope scope, String slug) {
    if (++suggestions > MOST_SUGGESTIONS) {
      return Optional.empty();
    }
    Set<String> slugs = new HashSet<>(scope.indexBySlug().keySet());
    slugs.addAll(scope.exitBySlug().keySet());
    return Nearest.to(slug, slugs).map(name -> "#" + name);
  }

  private static Source source(Scope scope) {
    return scope.document().source();
  }

  /** Compares the ways on of an including step with the exits that its fragment declares. */
  void inspectExits(UnresolvedStep taker) {
    taker.section().ways().forEach(way -> target(taker.scope(), way));
    Scope inner = taken.get(taker);
    if (inner == null) {
      return;
    }
    Set<String> exits = FragmentExpander.exits(inner.document());
    Set<String> answers = new HashSet<>();
    for (ParsedWay way : taker.section().ways()) {
      if (answers.add(Names.key(way.answer())) && !exits.contains(Names.key(way.answer()))) {
        problems.add(Problem.at(EXIT_UNKNOWN, source(taker.scope()), way.answerSpan()).with("exit", way.answer())
            .with("exits", String.join(", ", exits)).near(way.answer(), Nearest.to(way.answer(), exits)));
      }
    }
    exits.stream().filter(exit -> !answers.contains(exit)).forEach(exit -> problems.add(
        Problem.at(EXIT_WITHOUT_WAY, source(taker.scope()), taker.section().titleSpan()).with("exit", exit)));
  }
}
