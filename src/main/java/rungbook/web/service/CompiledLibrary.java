package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import rungbook.library.ChangedOutside;
import rungbook.library.CompiledTree;
import rungbook.library.LibraryCompiler;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Entry;
import rungbook.source.ProblemList;
import rungbook.source.Source;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/** The compiled library; compiled again after each save. */
@ApplicationScoped
public class CompiledLibrary {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final Library NOTHING = LibraryCompiler
      .compile(new LibraryText(new TreeMap<>(), new TreeMap<>(), List.of()));
  private static final long PATIENCE_MILLIS = 2_000;
  private final ReentrantLock compiling = new ReentrantLock();
  private final Store store;
  private volatile Compiled compiled = new Compiled(-1, List.of(), NOTHING, true);

  public CompiledLibrary(Store store) {
    this.store = store;
  }

  /** @param isIntact whether every text is what was saved */
  private record Compiled(long changes, List<Revision> heads, Library library, boolean isIntact) {
    boolean isBeforeTheFirst() {
      return changes < 0;
    }
  }

  public Library current() {
    return latest().library();
  }

  /** The newest revisions that {@link #current} was compiled from. */
  List<Revision> heads() {
    return latest().heads();
  }

  private Compiled latest() {
    var found = compiled;
    return found.changes() == store.changes() || !mayCompile(found) ? compiled : compileOnce(found);
  }

  /**
   * One reader compiles. The others wait up to two seconds, so that an author sees the new save, and then read the last
   * library.
   */
  private boolean mayCompile(Compiled found) {
    try {
      return found.isBeforeTheFirst() ? lockFirst() : compiling.tryLock(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private boolean lockFirst() {
    compiling.lock();
    return true;
  }

  private Compiled compileOnce(Compiled found) {
    try {
      return compileAgain();
    } catch (RuntimeException failed) {
      if (found.isBeforeTheFirst()) {
        throw failed;
      }
      LOG.error("the library cannot be compiled; the last one is shown", failed);
      return found;
    } finally {
      compiling.unlock();
    }
  }

  private Compiled compileAgain() {
    var changes = store.changes();
    if (compiled.changes() != changes) {
      var heads = store.heads();
      compiled = compile(changes, heads);
    }
    return compiled;
  }

  private Compiled compile(long changes, List<Revision> heads) {
    var stored = StoredText.of(heads);
    var isIntact = stored.changedOutside().isEmpty() && compiled.isIntact();
    var library = isIntact ? compile(stored.text(), compiled.library()) : LibraryCompiler.compile(stored.text());
    return new Compiled(changes, heads, ChangedOutside.mark(library, stored.changedOutside()),
        stored.changedOutside().isEmpty());
  }

  /** Only trees whose text changed are compiled again, unless something that all of them use changed too. */
  private static Library compile(LibraryText text, Library before) {
    if (!isSharedAlike(text, before.text())) {
      return LibraryCompiler.compile(text);
    }
    var known = before.trees().stream().collect(Collectors.toMap(CompiledTree::path, tree -> tree));
    var trees = text.in("trees/").entrySet().stream().map(entry -> {
      var old = known.get(entry.getValue().name());
      return old != null && old.tree().source().text().equals(entry.getValue().text()) ? old
          : LibraryCompiler.compile(entry.getKey(), entry.getValue(), before.shared(), text);
    }).toList();
    return new Library(text, before.shared(), trees, before.ofShared());
  }

  private static boolean isSharedAlike(LibraryText now, LibraryText before) {
    return now.texts().keySet().equals(before.texts().keySet()) && alike(now.pictures(), before.pictures())
        && now.unreadable().isEmpty() && before.unreadable().isEmpty()
        && now.texts().entrySet().stream().filter(text -> !text.getKey().startsWith("trees/"))
            .allMatch(text -> isSame(text.getValue(), before.texts().get(text.getKey())));
  }

  private static boolean isSame(Source now, @Nullable Source before) {
    return before != null && now.text().equals(before.text());
  }

  private static boolean alike(Map<String, byte[]> now, Map<String, byte[]> before) {
    return now.keySet().equals(before.keySet())
        && now.entrySet().stream().allMatch(picture -> Arrays.equals(picture.getValue(), before.get(picture.getKey())));
  }

  public Optional<CompiledTree> tree(DocumentPath path) {
    return current().trees().stream().filter(tree -> tree.path().equals(path.text())).findFirst();
  }

  /** A tree's text as somebody has it on the screen, against the library as saved. */
  public CompiledTree compile(DocumentPath path, String text) {
    return LibraryCompiler.compile(id(path), new Source(path.text(), text), current().shared(), current().text());
  }

  /** What is wrong with any text as somebody has it on the screen. */
  public ProblemList found(DocumentPath path, String text) {
    if (path.isTree()) {
      return compile(path, text).found();
    }
    var texts = new TreeMap<>(current().text().texts());
    texts.put(path.text(), new Source(path.text(), text));
    return foundIn(path, LibraryCompiler.compile(new LibraryText(texts, current().text().pictures(), List.of())));
  }

  /** What is wrong with a text as saved. */
  public ProblemList found(DocumentPath path) {
    return tree(path).map(CompiledTree::found).orElseGet(() -> foundIn(path, current()));
  }

  private static ProblemList foundIn(DocumentPath path, Library library) {
    return library.found().filter(problem -> problem.source().name().equals(path.text()));
  }

  /** The company's name, where the library says whose it is. */
  public Optional<String> company() {
    return Optional.ofNullable(current().text().texts().get(DocumentPath.COMPANY.text()))
        .flatMap(source -> DocumentReader.read(source).front("company")).map(Entry::value);
  }

  static String id(DocumentPath path) {
    return path.name().substring(0, path.name().length() - ".md".length());
  }
}
