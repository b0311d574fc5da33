package rungbook.library;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import rungbook.markdown.DocumentReader;
import rungbook.rules.paths.TreesCircle;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.tree.Shared;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;
import rungbook.tree.reader.TreeReader;

/** Gives the rule about circles between trees the other trees that it needs. Reads each once, and only if needed. */
final class Circles {

  private final LibraryText text;
  private final Shared shared;
  private final TreeLinks links;
  private final Map<String, Tree> compiled = new HashMap<>();
  private final Map<String, Optional<Tree>> trees = new ConcurrentHashMap<>();

  /** @param compiled trees read before with the same shared texts; used where the text is still the same */
  Circles(LibraryText text, Shared shared, List<CompiledTree> compiled) {
    this.text = text;
    this.shared = shared;
    compiled.forEach(one -> this.compiled.put(one.tree().id(), one.tree()));
    this.links = new TreeLinks(text);
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
    Map<String, Tree> read = new HashMap<>();
    ids.forEach(id -> trees.computeIfAbsent(id, this::read).ifPresent(tree -> read.put(id, tree)));
    return read;
  }

  private Optional<Tree> read(String id) {
    Source source = text.texts().get("trees/" + id + ".md");
    Tree before = compiled.get(id);
    if (source == null || (before != null && before.source().text().equals(source.text()))) {
      return Optional.ofNullable(source == null ? null : before);
    }
    return Guarded.read(source, () -> Optional.of(TreeReader.read(id, DocumentReader.read(source), shared).tree()),
        failed -> Optional.empty());
  }
}
