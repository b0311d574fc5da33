package rungbook.library;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rungbook.library.LibraryCompiler.Surroundings;
import rungbook.library.lookup.Uses;
import rungbook.source.Source;
import rungbook.system.Names;

/**
 * Compiles a library again after some of its texts changed. A shared text is read again if it changed; a tree, if it or
 * something that it uses changed. What several trees say together is looked at again for the trees with ways to those.
 */
final class Recompilation {

  private final LibraryText text;
  private final Library before;
  private final Map<String, CompiledTree> known;

  private Recompilation(LibraryText text, Library before) {
    this.text = text;
    this.before = before;
    this.known = before.trees().stream().collect(Collectors.toMap(CompiledTree::path, tree -> tree));
  }

  static Library of(LibraryText text, Library before) {
    return hasSameFiles(text, before.text()) ? new Recompilation(text, before).library()
        : LibraryCompiler.compile(text);
  }

  /** A shared text more or less can be missed by any tree. */
  private static boolean hasSameFiles(LibraryText now, LibraryText before) {
    return shared(now).keySet().equals(shared(before).keySet()) && now.unreadable().isEmpty()
        && before.unreadable().isEmpty();
  }

  private static SortedMap<String, Source> shared(LibraryText text) {
    return text.texts().subMap("shared/", "shared0");
  }

  private Library library() {
    Library read = readShared();
    Set<String> changed = Stream.concat(changedShared(), changedIds()).collect(Collectors.toSet());
    List<CompiledTree> kept = text.in(Uses.TREES).values().stream().flatMap(source -> kept(source, changed).stream())
        .toList();
    Library around = read.with(text, kept);
    Set<String> keptPaths = kept.stream().map(CompiledTree::path).collect(Collectors.toSet());
    Set<String> outdated = outdated(keptPaths);
    boolean areAll = changed.contains(used(WordListFile.PATH)) || !alike(text.pictures(), before.text().pictures());
    Surroundings surroundings = Surroundings.of(around);
    return read.with(text, text.in(Uses.TREES).entrySet().parallelStream().map(tree -> {
      String path = tree.getValue().name();
      CompiledTree earlier = keptPaths.contains(path) ? known.get(path) : null;
      if (earlier == null) {
        return LibraryCompiler.compile(tree.getKey(), tree.getValue(), read.shared(), surroundings);
      }
      return areAll || outdated.contains(path) ? again(earlier, surroundings) : earlier;
    }).toList());
  }

  private Library readShared() {
    boolean isAlike = changedShared().findAny().isEmpty()
        && text.in(Uses.TREES).keySet().equals(before.text().in(Uses.TREES).keySet());
    return isAlike ? before.with(text, List.of()) : LibraryCompiler.readShared(text, before.read());
  }

  /** The shared texts that changed, as trees name them. */
  private Stream<String> changedShared() {
    return shared(text).values().stream()
        .filter(source -> !isSame(source, before.text().texts().get(source.name())))
        .map(source -> used(source.name()));
  }

  private static String used(String path) {
    int name = path.lastIndexOf('/') + 1;
    return path.substring(0, name) + Names.key(path.substring(name, path.length() - ".md".length()));
  }

  /** The trees that are there only before or only now. */
  private Stream<String> changedIds() {
    Set<String> ids = new HashSet<>(text.in(Uses.TREES).keySet());
    Set<String> old = before.text().in(Uses.TREES).keySet();
    Set<String> both = new HashSet<>(ids);
    both.retainAll(old);
    ids.addAll(old);
    ids.removeAll(both);
    return ids.stream().map(id -> Uses.TREES + id);
  }

  private Optional<CompiledTree> kept(Source source, Set<String> changed) {
    return Optional.ofNullable(known.get(source.name())).filter(old -> isSame(source, old.tree().source()))
        .filter(old -> old.basis().filter(basis -> !Uses.meet(basis.uses(), changed)).isPresent());
  }

  /** The trees with ways to a tree that is not kept, or no longer there. */
  private Set<String> outdated(Set<String> kept) {
    Set<String> anew = Stream.concat(known.keySet().stream(), text.in(Uses.TREES).values().stream().map(Source::name))
        .filter(path -> !kept.contains(path)).collect(Collectors.toSet());
    return before.leadingTo(anew);
  }

  private static CompiledTree again(CompiledTree old, Surroundings around) {
    return old.basis().map(basis -> Guarded.read(old.tree().source(),
        () -> LibraryCompiler.finish(old.path(), old.tree(), basis, around), problem -> old)).orElse(old);
  }

  private static boolean isSame(Source now, @Nullable Source before) {
    return before != null && now.text().equals(before.text());
  }

  private static boolean alike(Map<String, byte[]> now, Map<String, byte[]> before) {
    return now.keySet().equals(before.keySet())
        && now.entrySet().stream().allMatch(picture -> Arrays.equals(picture.getValue(), before.get(picture.getKey())));
  }
}
