package rungbook.cli.cache;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.tree.Shared;
import rungbook.tree.Tree;

/** The trees of a library, each read when it is first asked for: a proof needs few of them. */
public final class ReadTrees {

  private final LibraryText text;
  private final Shared shared;
  private final Map<String, Optional<Tree>> trees = new HashMap<>();

  public ReadTrees(LibraryText text) {
    this.text = text;
    shared = LibraryCompiler.sharedAsNeeded(text);
  }

  /** @param id the file's name without {@code .md} */
  public Optional<Tree> tree(String id) {
    return trees.computeIfAbsent(id, name -> Optional.ofNullable(text.texts().get("trees/" + name + ".md"))
        .map(source -> LibraryCompiler.read(name, source, shared)));
  }
}
