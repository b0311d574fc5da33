package rungbook.library;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import rungbook.rules.paths.TreesCircle;
import rungbook.source.Problem;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Gives the rule about circles between trees the other trees that it needs. Reads one only if needed. */
final class Circles {

  private final TreeLinks links;
  private final TreesAsRead trees;

  Circles(LibraryText text, TreesAsRead trees) {
    this.links = new TreeLinks(text);
    this.trees = trees;
  }

  List<Problem> inspect(Tree tree) {
    Set<String> led = ledTo(tree);
    Set<String> between = led.isEmpty() ? Set.of() : links.between(led, tree.id());
    return between.isEmpty() && !led.contains(tree.id()) ? List.of() : TreesCircle.inspect(tree, read(between));
  }

  /** The ids of the trees to which ways of a tree lead. */
  static Set<String> ledTo(Tree tree) {
    return tree.steps().stream().flatMap(step -> step.ways().stream()).map(Way::target)
        .filter(Target.ToTree.class::isInstance).map(target -> ((Target.ToTree) target).tree())
        .collect(Collectors.toSet());
  }

  private Map<String, Tree> read(Set<String> ids) {
    return ids.parallelStream().flatMap(id -> trees.tree(id).stream())
        .collect(Collectors.toMap(Tree::id, Function.identity(), (one, same) -> one, TreeMap::new));
  }
}
