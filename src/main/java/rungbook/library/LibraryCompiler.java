package rungbook.library;

import java.util.List;
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
import rungbook.tree.reader.TreeReader;

/** Compiles a library from text. */
public final class LibraryCompiler {

  private LibraryCompiler() {}

  public static Library compile(LibraryText text) {
    Library library = readShared(text);
    return library.with(text, trees(library, id -> true).toList());
  }

  /** A library without its trees, for callers that compile only some of them. */
  public static Library readShared(LibraryText text) {
    SharedTexts.Read shared = SharedTexts.read(text);
    Problems problems = new Problems();
    problems.addAll(text.unreadable());
    problems.addAll(shared.problems());
    WordListFile.Read words = WordListFile.read(text);
    problems.addAll(words.problems());
    problems.addAll(new WordCheck(text, words::list).inspect(shared.documents()));
    ProblemList found = Silencing.ofShared(shared.documents(), problems.inReadingOrder());
    return new Library(text, shared.shared(), words.list(), List.of(), Listed.of(found, TextLimits.inForce()));
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
    Surroundings around = Surroundings.of(text, words, new Circles(text, shared, compiled));
    return text.in("trees/").entrySet().parallelStream().filter(tree -> wanted.test(tree.getKey()))
        .map(tree -> compile(tree.getKey(), tree.getValue(), shared, around));
  }

  /**
   * Compiles one tree with the shared texts of a library, as the editor does on each change.
   *
   * @param id the file's name without {@code .md}
   */
  public static CompiledTree compile(String id, Source source, Library library) {
    return compile(id, source, library.shared(), around(library));
  }

  private static Surroundings around(Library library) {
    return Surroundings.of(library.text(), library::words,
        new Circles(library.text(), library.shared(), library.trees()));
  }

  /** What a tree is checked against besides the shared texts, set up once for all trees. */
  private record Surroundings(LibraryText text, Crossings crossings, Circles circles, WordCheck words) {
    static Surroundings of(LibraryText text, Supplier<WordList> words, Circles circles) {
      return new Surroundings(text, new Crossings(text), circles, new WordCheck(text, words));
    }
  }

  private static CompiledTree compile(String id, Source source, Shared shared, Surroundings around) {
    return Guarded.read(source, () -> compile(id, DocumentReader.read(source), shared, around),
        problem -> refused(id, Document.refused(source, problem, TextLimits.inForce()), shared));
  }

  private static CompiledTree refused(String id, Document document, Shared shared) {
    return new CompiledTree(path(id), TreeReader.read(id, document, shared).tree(),
        ProblemList.of(document.problems()));
  }

  private static String path(String id) {
    return "trees/" + id + ".md";
  }

  private static CompiledTree compile(String id, Document document, Shared shared, Surroundings around) {
    TreeReader.Read read = TreeReader.read(id, document, shared);
    Problems problems = new Problems();
    problems.addAll(read.problems());
    problems.addAll(Registry.inspect(read.tree()));
    problems.addAll(around.crossings().inspect(read.tree()));
    problems.addAll(around.circles().inspect(read.tree()));
    problems.addAll(PictureLinks.inspect(read.tree(), around.text().pictures()));
    problems.addAll(around.words().inspect(read.tree()));
    ProblemList found = Silencing.ofCheck(read.tree(), problems.inReadingOrder());
    return new CompiledTree(path(id), read.tree(), Listed.of(found, document.limits()));
  }
}
