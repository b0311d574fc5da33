package rungbook.tree;

import java.util.Map;
import java.util.Set;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.tree.reader.TreeReader;

/** A tree by itself: no system, meter or fragment, and no other tree. */
public final class SingleTree {

  public static final Shared NOTHING_SHARED = new Shared(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
      Map.of(), Set.of());

  private SingleTree() {}

  /** @param source the whole text */
  public static TreeReader.Read read(Source source) {
    return TreeReader.read("t", DocumentReader.read(source), NOTHING_SHARED);
  }

  /** @param steps what follows the front matter */
  public static TreeReader.Read read(String steps) {
    return read(new Source("trees/t.md", "---\ntitle: T\ncomplaint: C\n---\n\n" + steps));
  }
}
