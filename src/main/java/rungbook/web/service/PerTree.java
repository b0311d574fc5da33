package rungbook.web.service;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import rungbook.library.CompiledTree;

/**
 * What was made from compiled trees, kept for as long as a tree is not compiled anew, which happens when its text or
 * anything
 * that it uses changes. Of many trees those last asked for are kept, and none when memory runs short. Threads may
 * share one.
 *
 * @param <T> what is made; nobody changes it
 */
final class PerTree<T> {
  private static final int MOST_KEPT = 512;
  private final Map<String, Kept<T>> kept = new LinkedHashMap<>(16, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<String, Kept<T>> eldest) {
      return size() > MOST_KEPT;
    }
  };

  private record Kept<T>(CompiledTree tree, String variant, SoftReference<T> made) {
    // by identity: a compiled tree's value is all its text
    boolean isOf(CompiledTree tree, String variant) {
      return this.tree == tree && this.variant.equals(variant);
    }
  }

  /** @param variant what else decides what is made, such as the revision's number */
  T of(CompiledTree tree, String variant, Supplier<T> make) {
    var known = known(tree, variant);
    if (known != null) {
      return known;
    }
    var made = make.get();
    synchronized (kept) {
      kept.put(tree.path(), new Kept<>(tree, variant, new SoftReference<>(made)));
    }
    return made;
  }

  private T known(CompiledTree tree, String variant) {
    synchronized (kept) {
      var found = kept.get(tree.path());
      return found != null && found.isOf(tree, variant) ? found.made().get() : null;
    }
  }
}
