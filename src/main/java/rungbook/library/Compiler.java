package rungbook.library;

import java.util.List;
import rungbook.markdown.DocumentReader;
import rungbook.rules.Registry;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.tree.Shared;
import rungbook.tree.TreeReader;

/** The whole way from text to a compiled library. */
public final class Compiler {

  private Compiler() {}

  public static Library compile(LibraryText text) {
    SharedTexts.Read shared = SharedTexts.read(text);
    Crossings crossings = new Crossings(text);
    List<CompiledTree> trees = text.in("trees/").entrySet().parallelStream()
        .map(entry -> compile(entry.getKey(), entry.getValue(), shared.shared(), text, crossings))
        .toList();
    Problems problems = new Problems();
    problems.addAll(text.unreadable());
    problems.addAll(shared.problems());
    return new Library(text, shared.shared(), trees, problems.inReadingOrder());
  }

  /** One tree against what a library shares; what an editor does while someone types. @param id the file's name without {@code .md} */
  public static CompiledTree compile(String id, Source source, Shared shared, LibraryText text) {
    return compile(id, source, shared, text, new Crossings(text));
  }

  private static CompiledTree compile(String id, Source source, Shared shared, LibraryText text, Crossings crossings) {
    var document = DocumentReader.read(source);
    TreeReader.Read read = TreeReader.read(id, document, shared);
    Problems problems = new Problems();
    problems.addAll(read.problems());
    problems.addAll(Registry.inspect(read.tree()));
    problems.addAll(crossings.inspect(read.tree()));
    problems.addAll(Pictures.inspect(read.tree(), text.pictures()));
    return new CompiledTree("trees/" + id + ".md", read.tree(), problems.inReadingOrder());
  }
}
