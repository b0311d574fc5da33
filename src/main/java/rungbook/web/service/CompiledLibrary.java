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

/** The library as it is compiled now; compiled again when something was saved. */
@ApplicationScoped
public class CompiledLibrary {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final long PATIENCE_MILLIS = 2_000;
  private final ReentrantLock compiling = new ReentrantLock();
  private final Store store;
  private volatile Compiled compiled = new Compiled(-1, List.of(), null, true);

  public CompiledLibrary(Store store) {
    this.store = store;
  }

  /** @param isIntact whether every text is what was saved */
  private record Compiled(long changes, List<Revision> heads, Library library, boolean isIntact) {}

  public Library library() {
    return current().library();
  }

  /** The newest revisions that {@link #library} was compiled from. */
  List<Revision> heads() {
    return current().heads();
  }

  private Compiled current() {
    var found = compiled;
    return found.changes() == store.changes() || !mayCompile(found) ? compiled : compileOnce(found);
  }

  /**
   * One reader compiles; the others wait a moment, so that who has saved sees it, and then read the last library that
   * is there.
   */
  private boolean mayCompile(Compiled found) {
    try {
      return found.library() == null ? lockFirst() : compiling.tryLock(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
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
      if (found.library() == null) {
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
    if (before == null || !isSharedAlike(text, before.text())) {
      return LibraryCompiler.compile(text);
    }
    var known = before.trees().stream().collect(Collectors.toMap(CompiledTree::path, tree -> tree));
    var trees = text.in("trees/").entrySet().stream().map(entry -> {
      var old = known.get(entry.getValue().name());
      return old.tree().source().text().equals(entry.getValue().text()) ? old
          : LibraryCompiler.compile(entry.getKey(), entry.getValue(), before.shared(), text);
    }).toList();
    return new Library(text, before.shared(), trees, before.ofShared());
  }

  private static boolean isSharedAlike(LibraryText now, LibraryText before) {
    return now.texts().keySet().equals(before.texts().keySet()) && alike(now.pictures(), before.pictures())
        && now.unreadable().isEmpty() && before.unreadable().isEmpty()
        && now.texts().entrySet().stream().filter(text -> !text.getKey().startsWith("trees/"))
            .allMatch(text -> text.getValue().text().equals(before.texts().get(text.getKey()).text()));
  }

  private static boolean alike(Map<String, byte[]> now, Map<String, byte[]> before) {
    return now.keySet().equals(before.keySet())
        && now.entrySet().stream().allMatch(picture -> Arrays.equals(picture.getValue(), before.get(picture.getKey())));
  }

  public Optional<CompiledTree> tree(DocumentPath path) {
    return library().trees().stream().filter(tree -> tree.path().equals(path.text())).findFirst();
  }

  /** A tree's text as somebody has it on the screen, against the library as saved. */
  public CompiledTree compile(DocumentPath path, String text) {
    return LibraryCompiler.compile(id(path), new Source(path.text(), text), library().shared(), library().text());
  }

  /** What is wrong with any text as somebody has it on the screen. */
  public ProblemList found(DocumentPath path, String text) {
    if (path.isTree()) {
      return compile(path, text).found();
    }
    var texts = new TreeMap<>(library().text().texts());
    texts.put(path.text(), new Source(path.text(), text));
    return foundIn(path, LibraryCompiler.compile(new LibraryText(texts, library().text().pictures(), List.of())));
  }

  /** What is wrong with a text as saved. */
  public ProblemList found(DocumentPath path) {
    return tree(path).map(CompiledTree::found).orElseGet(() -> foundIn(path, library()));
  }

  private static ProblemList foundIn(DocumentPath path, Library library) {
    return library.found().filter(problem -> problem.source().name().equals(path.text()));
  }

  /** The company's name, where the library says whose it is. */
  public Optional<String> company() {
    return Optional.ofNullable(library().text().texts().get(DocumentPath.COMPANY.text()))
        .flatMap(source -> DocumentReader.read(source).front("company")).map(Entry::value);
  }

  static String id(DocumentPath path) {
    return path.name().substring(0, path.name().length() - ".md".length());
  }
}
