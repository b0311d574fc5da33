package rungbook.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import rungbook.markdown.ParsedWay;
import rungbook.markdown.Section;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Checks that ways on to a step of another tree lead to an existing step. Reads the other tree only if needed. */
final class Crossings {

  static final Code UNKNOWN_STEP_THERE = Code.of("unknown-step-there");

  private final TreesAsRead trees;
  private final Map<String, Optional<Set<String>>> stepsByTree = new ConcurrentHashMap<>();

  Crossings(TreesAsRead trees) {
    this.trees = trees;
  }

  List<Problem> inspect(Tree tree) {
    var problems = new ArrayList<Problem>(0);
    for (Step step : tree.steps()) {
      for (ParsedWay way : step.header().section().ways()) {
        int end = way.target().indexOf(".md#");
        if (end > 0) {
          inspect(step, way, way.target().substring(0, end), way.target().substring(end + ".md#".length()))
              .ifPresent(problems::add);
        }
      }
    }
    return problems;
  }

  private Optional<Problem> inspect(Step step, ParsedWay way, String tree, String target) {
    Optional<Set<String>> steps = stepsByTree.computeIfAbsent(tree, this::steps);
    if (target.isEmpty() || steps.isEmpty() || steps.get().contains(target)) {
      return Optional.empty();
    }
    return Optional.of(Problem.at(UNKNOWN_STEP_THERE, step.source(), way.targetSpan()).with("target", target)
        .with("tree", tree + ".md")
        .near(tree + ".md#" + target, Nearest.to(target, steps.get()).map(name -> tree + ".md#" + name)));
  }

  /** The ids of a tree's steps; empty if there is no such tree, which the link's reader reports. */
  private Optional<Set<String>> steps(String tree) {
    return trees.document(tree).map(document -> document.sections().stream()
        .filter(Section::isStep).map(Section::slug).collect(Collectors.toSet()));
  }
}
