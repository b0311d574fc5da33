package rungbook.library;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.rules.Registry;
import rungbook.source.ProblemList;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.TextLimits;
import rungbook.tree.Shared;
import rungbook.tree.reader.TreeReader;

/** The whole way from text to a compiled library. */
public final class LibraryCompiler {

  private LibraryCompiler() {}

  public static Library compile(LibraryText text) {
    Library library = readShared(text);
    return new Library(text, library.shared(), trees(text, library.shared(), id -> true).toList(),
        library.ofShared());
  }

  /** A library whose trees are still to be compiled, for whoever needs only some of them. */
  public static Library readShared(LibraryText text) {
    SharedTexts.Read shared = SharedTexts.read(text);
    Problems problems = new Problems();
    problems.addAll(text.unreadable());
    problems.addAll(shared.problems());
    ProblemList found = Silencing.ofShared(shared.documents(), problems.inReadingOrder());
    return new Library(text, shared.shared(), List.of(), Listed.of(found, TextLimits.inForce()));
  }

  /**
   * What a library shares, each text read when a tree first asks for it: for whoever compiles few trees and no more.
   */
  public static Shared sharedAsNeeded(LibraryText text) {
    return SharedTexts.asNeeded(text);
  }

  /** Trees of a library, in the order of their ids, compiled on all cores. */
  public static Stream<CompiledTree> trees(LibraryText text, Shared shared, Predicate<String> wanted) {
    Crossings crossings = new Crossings(text);
    return text.in("trees/").entrySet().parallelStream().filter(tree -> wanted.test(tree.getKey()))
        .map(tree -> compile(tree.getKey(), tree.getValue(), shared, text, crossings));
  }

  /**
   * One tree against what a library shares; what an editor does while someone types.
   *
   * @param id the file's name without {@code .md}
   */
  public static CompiledTree compile(String id, Source source, Shared shared, LibraryText text) {
    return compile(id, source, shared, text, new Crossings(text));
  }

  private static CompiledTree compile(String id, Source source, Shared shared, LibraryText text, Crossings crossings) {
    return Guarded.read(source, () -> compile(id, DocumentReader.read(source), shared, text, crossings),
        problem -> refused(id, Document.refused(source, problem, TextLimits.inForce()), shared));
  }

  private static CompiledTree refused(String id, Document document, Shared shared) {
    return new CompiledTree(path(id), TreeReader.read(id, document, shared).tree(),
        ProblemList.of(document.problems()));
  }

  private static String path(String id) {
    return "trees/" + id + ".md";
  }

  private static CompiledTree compile(String id, Document document, Shared shared, LibraryText text,
      Crossings crossings) {
    TreeReader.Read read = TreeReader.read(id, document, shared);
    Problems problems = new Problems();
    problems.addAll(read.problems());
    problems.addAll(Registry.inspect(read.tree()));
    problems.addAll(crossings.inspect(read.tree()));
    problems.addAll(PictureLinks.inspect(read.tree(), text.pictures()));
    ProblemList found = Silencing.ofCheck(read.tree(), problems.inReadingOrder());
    return new CompiledTree(path(id), read.tree(), Listed.of(found, document.limits()));
  }
}
