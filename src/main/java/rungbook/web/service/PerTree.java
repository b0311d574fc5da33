package rungbook.web.service;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rungbook.library.CompiledTree;

/**
 * Caches what is made from compiled trees. An entry is valid until its tree is compiled again, that is, until its text
 * or anything it uses changes. Keeps the most recently used entries, and drops them when memory runs short.
 * Thread-safe.
 *
 * @param <T> what is made; immutable
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
    @SuppressWarnings("ReferenceEquality") // a compiled tree's value is all its text
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

  private @Nullable T known(CompiledTree tree, String variant) {
    synchronized (kept) {
      var found = kept.get(tree.path());
      return found != null && found.isOf(tree, variant) ? found.made().get() : null;
    }
  }
}
