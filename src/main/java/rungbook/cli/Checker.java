package rungbook.cli;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungbook.library.CompiledTree;
import rungbook.library.LibraryCompiler;
import rungbook.library.Folder;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.report.Report;
import rungbook.report.SourceRenamer;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Silenced;
import rungbook.tree.Shared;

/** Checks batches of files, each against its library. */
final class Checker {

  private final Console terminal;
  private final Progress progress;

  private Checker(Console terminal, Progress progress) {
    this.terminal = terminal;
    this.progress = progress;
  }

  static Report check(Collection<Path> files, Console terminal) throws IOException {
    try (Progress progress = Progress.of(files.size(), terminal)) {
      var problems = new ArrayList<Problem>();
      var silenced = new ArrayList<Silenced>();
      for (Batch batch : Batch.of(files, terminal.home())) {
        ProblemList found = new Checker(terminal, progress).check(batch);
        problems.addAll(found.shown());
        silenced.addAll(found.silenced());
      }
      return new Report(files.size(), problems, silenced);
    }
  }

  /**
   * Trees read and compiled once, so the pack contains exactly what was checked.
   *
   * @param report their problems
   */
  record Compiled(LibraryText text, Shared shared, List<CompiledTree> trees, Report report) {}

  /** @param batch contains trees only, no shared texts */
  static Compiled compile(Batch batch, Console terminal) throws IOException {
    try (Progress progress = Progress.of(batch.files().size(), terminal)) {
      return new Checker(terminal, progress).compile(batch);
    }
  }

  private Compiled compile(Batch batch) throws IOException {
    Set<String> requested = names(batch);
    LibraryText text = batch.read();
    Shared shared = LibraryCompiler.sharedAsNeeded(text);
    List<CompiledTree> trees = trees(requested, text, shared).toList();
    ProblemList found = shown(batch, requested, text,
        Stream.concat(unreadable(requested, text), trees.stream().map(this::found)));
    return new Compiled(text, shared, trees, new Report(requested.size(), found.shown(), found.silenced()));
  }

  private ProblemList check(Batch batch) throws IOException {
    Set<String> requested = names(batch);
    LibraryText text = batch.read();
    return shown(batch, requested, text,
        requested.stream().anyMatch(name -> name.startsWith("shared/")) ? withShared(requested, text)
            : inTrees(requested, text));
  }

  private static Set<String> names(Batch batch) {
    return batch.files().stream().map(batch::nameOf).collect(toSet());
  }

  /** In reading order, each under its file's name as people see it from here. */
  private ProblemList shown(Batch batch, Set<String> requested, LibraryText text, Stream<ProblemList> inTexts) {
    List<ProblemList> found = Stream.concat(Stream.of(ProblemList.of(missing(requested, text))), inTexts).toList();
    return new SourceRenamer(name -> terminal.shown(batch.fileOf(name))).of(ProblemList.join(found));
  }

  private Stream<ProblemList> inTrees(Set<String> requested, LibraryText text) {
    return Stream.concat(unreadable(requested, text),
        trees(requested, text, LibraryCompiler.sharedAsNeeded(text)).map(this::found));
  }

  private static Stream<CompiledTree> trees(Set<String> requested, LibraryText text, Shared shared) {
    return LibraryCompiler.trees(text, shared, id -> requested.contains("trees/" + id + ".md"));
  }

  private static Stream<ProblemList> unreadable(Set<String> requested, LibraryText text) {
    return Stream.of(ProblemList.of(text.unreadable()).filter(problem -> requested.contains(problem.source().name())));
  }

  /**
   * A fragment's problems appear in the trees that include it, so this compiles all trees and keeps the problems of the
   * requested files.
   */
  private Stream<ProblemList> withShared(Set<String> requested, LibraryText text) {
    Library library = LibraryCompiler.readShared(text);
    Predicate<Problem> inRequested = problem -> requested.contains(problem.source().name());
    Stream<ProblemList> inTrees = LibraryCompiler.trees(library, id -> true)
        .map(tree -> requested.contains(tree.path()) ? found(tree) : found(tree).filter(inRequested));
    return Stream.of(Library.join(library.ofShared().filter(inRequested), inTrees));
  }

  private ProblemList found(CompiledTree tree) {
    progress.step();
    return tree.found();
  }

  /** The problems of files that a library does not read: symbolic links and other irregular files. */
  private static List<Problem> missing(Set<String> requested, LibraryText text) {
    Set<String> unreadable = text.unreadable().stream().map(problem -> problem.source().name()).collect(toSet());
    return requested.stream().filter(name -> !text.texts().containsKey(name) && !unreadable.contains(name))
        .map(name -> Folder.unreadable(name, "it is not a regular file")).toList();
  }
}
