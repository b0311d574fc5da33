package rungbook.library.lookup;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rungbook.tree.Shared;

/** Notes what a tree asks of the shared texts, so that it is known which changes concern it. */
public final class Uses {

  public static final String SYSTEMS = "shared/systems/";
  public static final String METERS = "shared/meters/";
  public static final String CAUTIONS = "shared/cautions/";
  public static final String QUALIFICATIONS = "shared/qualifications/";
  public static final String FRAGMENTS = "shared/fragments/";
  public static final String TREES = "trees/";

  /** After a folder: all that is in it. */
  private static final String ALL = "*";

  private Uses() {}

  /** @param uses takes each name that is asked for, after its folder; not those of which only the presence is asked */
  public static Shared noted(Shared shared, Set<String> uses) {
    return new Shared(new Noting<>(shared.systems(), name -> uses.add(SYSTEMS + name)),
        new Noting<>(shared.circuits(), name -> uses.add(SYSTEMS + name)),
        new Noting<>(shared.meters(), name -> uses.add(METERS + name)),
        new Noting<>(shared.cautions(), name -> uses.add(CAUTIONS + name)),
        new Noting<>(shared.qualifications(), name -> uses.add(QUALIFICATIONS + name)),
        new Noting<>(shared.fragments(), name -> uses.add(FRAGMENTS + name)),
        new NotingSet(shared.trees(), name -> uses.add(TREES + name)));
  }

  /** Whether a tree that uses these is concerned by a change of those. */
  public static boolean meet(Set<String> uses, Set<String> changed) {
    for (String one : changed) {
      if (uses.contains(one) || uses.contains(one.substring(0, one.lastIndexOf('/') + 1) + ALL)) {
        return true;
      }
    }
    return false;
  }

  private static final class Noting<T> extends AbstractMap<String, T> {
    private final Map<String, T> known;
    private final Consumer<String> note;

    private Noting(Map<String, T> known, Consumer<String> note) {
      this.known = known;
      this.note = note;
    }

    @Override
    public @Nullable T get(Object key) {
      note.accept((String) key);
      return known.get(key);
    }

    @Override
    public boolean containsKey(Object key) {
      return known.containsKey(key);
    }

    @Override
    public Set<String> keySet() {
      return known.keySet();
    }

    @Override
    public Set<Entry<String, T>> entrySet() {
      note.accept(ALL);
      return known.entrySet();
    }
  }

  private static final class NotingSet extends AbstractSet<String> {
    private final Set<String> known;
    private final Consumer<String> note;

    private NotingSet(Set<String> known, Consumer<String> note) {
      this.known = known;
      this.note = note;
    }

    @Override
    public boolean contains(Object name) {
      note.accept((String) name);
      return known.contains(name);
    }

    @Override
    public Iterator<String> iterator() {
      note.accept(ALL);
      return known.iterator();
    }

    @Override
    public int size() {
      note.accept(ALL);
      return known.size();
    }
  }
}
