package rungbook.web.service;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
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
import rungbook.store.DiskFull;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;

/**
 * The compiled library. Each save has it compiled anew beside the readers, who read the last one until then. Only the
 * first reader waits, and one who asks for a tree that the last one does not have.
 */
@ApplicationScoped
public class CompiledLibrary {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final Library NOTHING = LibraryCompiler
      .compile(new LibraryText(new TreeMap<>(), new TreeMap<>(), List.of()));
  private final ReentrantLock compiling = new ReentrantLock();
  private final AtomicBoolean isScheduled = new AtomicBoolean();
  // a save that is answered while the server stops is not refused because nobody checks it any more
  private final ExecutorService checker = new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS,
      new LinkedBlockingQueue<>(), CompiledLibrary::daemon, new ThreadPoolExecutor.DiscardPolicy());
  private final Store store;
  private volatile Compiled compiled = new Compiled(-1, List.of(), NOTHING, true);

  public CompiledLibrary(Store store) {
    this.store = store;
    store.whenChanged(this::compileSoon);
  }

  /** @param isIntact whether every text is what was saved */
  private record Compiled(long changes, List<Revision> heads, Library library, boolean isIntact) {
    boolean isBeforeTheFirst() {
      return changes < 0;
    }
  }

  private static Thread daemon(Runnable work) {
    var thread = new Thread(work, "library");
    thread.setDaemon(true);
    return thread;
  }

  @PreDestroy
  void close() {
    checker.shutdown();
  }

  public Library current() {
    return checked().library();
  }

  /** The last library that was checked. */
  public CheckedLibrary checked() {
    if (compiled.isBeforeTheFirst()) {
      return newest();
    }
    // asked again here, because a compile may have failed
    compileSoon();
    return toChecked();
  }

  /** The library as it is now; waits until it is compiled. */
  public CheckedLibrary newest() {
    compile();
    return toChecked();
  }

  private CheckedLibrary toChecked() {
    var last = compiled;
    return new CheckedLibrary(last.library(), last.heads(), isOf(last));
  }

  /** Whether something was saved that the last library does not have. */
  boolean isBehind() {
    var last = compiled;
    return !last.isBeforeTheFirst() && !isOf(last);
  }

  private boolean isOf(Compiled last) {
    return last.changes() == store.changes();
  }

  private void compileSoon() {
    if (isBehind() && isScheduled.compareAndSet(false, true)) {
      checker.execute(() -> {
        isScheduled.set(false);
        compile();
      });
    }
  }

  private void compile() {
    compiling.lock();
    compileOnce(compiled);
  }

  private void compileOnce(Compiled found) {
    try {
      compileAgain();
    } catch (RuntimeException failed) {
      if (found.isBeforeTheFirst()) {
        throw failed;
      }
      if (DiskFull.isReason(failed)) {
        LOG.error("the disk is full, so the library cannot be compiled; the last one is shown");
      } else {
        LOG.error("the library cannot be compiled; the last one is shown", failed);
      }
    } finally {
      compiling.unlock();
    }
  }

  private void compileAgain() {
    var changes = store.changes();
    if (compiled.changes() != changes) {
      var heads = store.heads();
      compiled = compile(changes, heads);
    }
  }

  private Compiled compile(long changes, List<Revision> heads) {
    var stored = StoredText.of(heads);
    var isIntact = stored.changedOutside().isEmpty() && compiled.isIntact();
    var library = isIntact ? LibraryCompiler.compile(stored.text(), compiled.library())
        : LibraryCompiler.compile(stored.text());
    return new Compiled(changes, heads, ChangedOutside.mark(library, stored.changedOutside()),
        stored.changedOutside().isEmpty());
  }

  /** The last checked library that has this tree; waits for it only when the tree is new. */
  public CheckedLibrary with(DocumentPath path) {
    var last = checked();
    return last.isNewest() || last.tree(path).isPresent() || saved(path).isEmpty() ? last : newest();
  }

  private Optional<Revision> saved(DocumentPath tree) {
    return tree.isTree() ? store.head(tree).filter(Revision::isThere) : Optional.empty();
  }

  public Optional<CompiledTree> tree(DocumentPath path) {
    return tree(path, checked());
  }

  /** A tree as saved, checked with the rest of a library that may be older. */
  public Optional<CompiledTree> tree(DocumentPath path, CheckedLibrary last) {
    return last.isNewest() ? last.tree(path) : saved(path).map(head -> tree(head, last));
  }

  private static CompiledTree tree(Revision head, CheckedLibrary last) {
    var library = last.library();
    var source = new Source(head.path().text(), head.text());
    var tree = last.tree(head.path()).filter(known -> known.tree().source().text().equals(source.text()))
        .orElseGet(() -> LibraryCompiler.compile(id(head.path()), source, library));
    return head.isIntact() ? tree : ChangedOutside.mark(tree);
  }

  /** A tree's text as somebody has it on the screen, against the library as saved. */
  public CompiledTree compile(DocumentPath path, String text) {
    return LibraryCompiler.compile(id(path), new Source(path.text(), text), current());
  }

  /** What is wrong with any text as somebody has it on the screen. */
  public ProblemList found(DocumentPath path, String text) {
    if (path.isTree()) {
      return compile(path, text).found();
    }
    var library = current();
    var texts = new TreeMap<>(library.text().texts());
    texts.put(path.text(), new Source(path.text(), text));
    var shown = new LibraryText(texts, library.text().pictures(), List.of());
    return foundIn(path, LibraryCompiler.compile(shown, library));
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
