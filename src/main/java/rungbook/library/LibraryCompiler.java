package rungbook.library;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.rules.Registry;
import rungbook.rules.wording.WordList;
import rungbook.source.ProblemList;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.TextLimits;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** Compiles a library from text. */
public final class LibraryCompiler {

  private LibraryCompiler() {}

  public static Library compile(LibraryText text) {
    Library library = readShared(text);
    return library.with(text, trees(library, id -> true).toList());
  }

  /** Compiles a library of which most was compiled before, and takes that over. */
  public static Library compile(LibraryText text, Library before) {
    return Recompilation.of(text, before);
  }

  /** A library without its trees, for callers that compile only some of them. */
  public static Library readShared(LibraryText text) {
    return readShared(text, Map.of());
  }

  /** @param before shared texts as they were read before, taken over where they are still the same */
  static Library readShared(LibraryText text, Map<String, SharedTexts.ReadText> before) {
    SharedTexts.Read shared = SharedTexts.read(text, before);
    Problems problems = new Problems();
    problems.addAll(text.unreadable());
    problems.addAll(shared.problems());
    WordListFile.Read words = WordListFile.read(text);
    problems.addAll(words.problems());
    problems.addAll(new WordCheck(text, words::list).inspect(shared.documents()));
    ProblemList found = Silencing.ofShared(shared.documents(), problems.inReadingOrder());
    return new Library(text, shared.shared(), words.list(), List.of(), Listed.of(found, TextLimits.inForce()),
        shared.texts());
  }

  /**
   * The shared texts, each read when a tree first needs it, for callers that compile only a few trees. Does not report
   * their problems.
   */
  public static Shared sharedAsNeeded(LibraryText text) {
    return SharedTexts.asNeeded(text);
  }

  /** Compiles the wanted trees in parallel, in the order of their ids, and reads the list of words beside them. */
  public static Stream<CompiledTree> trees(LibraryText text, Shared shared, Predicate<String> wanted) {
    var words = CompletableFuture.supplyAsync(() -> WordListFile.read(text).list());
    return trees(text, shared, List.of(), words::join, wanted);
  }

  /** Compiles the wanted trees in parallel, in the order of their ids. */
  public static Stream<CompiledTree> trees(Library library, Predicate<String> wanted) {
    return trees(library.text(), library.shared(), library.trees(), library::words, wanted);
  }

  private static Stream<CompiledTree> trees(LibraryText text, Shared shared, List<CompiledTree> compiled,
      Supplier<WordList> words, Predicate<String> wanted) {
    Surroundings around = Surroundings.of(text, words, new TreesAsRead(text, shared, compiled));
    return text.in("trees/").entrySet().parallelStream().filter(tree -> wanted.test(tree.getKey()))
        .map(tree -> compile(tree.getKey(), tree.getValue(), shared, around));
  }

  /**
   * Compiles one tree with the shared texts of a library, as the editor does on each change.
   *
   * @param id the file's name without {@code .md}
   */
  public static CompiledTree compile(String id, Source source, Library library) {
    return compile(id, source, library.shared(), Surroundings.of(library));
  }

  /** What a tree is checked against besides the shared texts, set up once for all trees. */
  record Surroundings(LibraryText text, TreesAsRead trees, Crossings crossings, Circles circles, WordCheck words) {
    static Surroundings of(Library library) {
      return of(library.text(), library::words, new TreesAsRead(library.text(), library.shared(), library.trees()));
    }

    private static Surroundings of(LibraryText text, Supplier<WordList> words, TreesAsRead trees) {
      return new Surroundings(text, trees, new Crossings(trees), new Circles(text, trees), new WordCheck(text, words));
    }
  }

  static CompiledTree compile(String id, Source source, Shared shared, Surroundings around) {
    return Guarded.read(source, () -> {
      TreesAsRead.Read read = around.trees().read(id, source);
      Problems problems = new Problems();
      problems.addAll(read.read().problems());
      problems.addAll(Registry.inspect(read.read().tree()));
      return finish(path(id), read.read().tree(), new CompiledTree.Basis(problems.all(), read.uses()), around);
    }, problem -> refused(id, Document.refused(source, problem, TextLimits.inForce()), shared));
  }

  /** Reads one tree and does not check it: all that a proof needs. */
  public static Tree read(String id, Source source, Shared shared) {
    return Guarded.read(source, () -> TreeReader.read(id, DocumentReader.read(source), shared).tree(),
        problem -> refused(id, Document.refused(source, problem, TextLimits.inForce()), shared).tree());
  }

  private static CompiledTree refused(String id, Document document, Shared shared) {
    return new CompiledTree(path(id), TreeReader.read(id, document, shared).tree(),
        ProblemList.of(document.problems()), Optional.empty());
  }

  private static String path(String id) {
    return "trees/" + id + ".md";
  }

  /** Adds what other trees, pictures and the words to avoid say about a tree. */
  static CompiledTree finish(String path, Tree tree, CompiledTree.Basis basis, Surroundings around) {
    Problems problems = new Problems();
    problems.addAll(basis.problems());
    problems.addAll(around.crossings().inspect(tree));
    problems.addAll(around.circles().inspect(tree));
    problems.addAll(PictureLinks.inspect(tree, around.text().pictures()));
    problems.addAll(around.words().inspect(tree));
    ProblemList found = Silencing.ofCheck(tree, problems.inReadingOrder());
    return new CompiledTree(path, tree, Listed.of(found, tree.document().limits()), Optional.of(basis));
  }
}
