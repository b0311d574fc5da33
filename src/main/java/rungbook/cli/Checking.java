package rungbook.cli;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.library.CompiledTree;
import rungbook.library.Compiler;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.report.Report;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;

/** Checks batches of files, each against its library. */
final class Checking {

  private final Terminal terminal;
  private final Progress progress;

  private Checking(Terminal terminal, Progress progress) {
    this.terminal = terminal;
    this.progress = progress;
  }

  static Report check(Collection<Path> files, Terminal terminal) throws IOException {
    try (Progress progress = Progress.of(files.size(), terminal)) {
      var problems = new ArrayList<Problem>();
      for (Batch batch : Batch.of(files, terminal.home())) {
        problems.addAll(new Checking(terminal, progress).check(batch));
      }
      return new Report(files.size(), problems);
    }
  }

  private List<Problem> check(Batch batch) throws IOException {
    Set<String> asked = batch.files().stream().map(batch::nameOf).collect(toSet());
    LibraryText text = batch.read();
    Problems found = new Problems();
    found.addAll(missing(asked, text));
    found.addAll(asked.stream().anyMatch(name -> name.startsWith("shared/")) ? withShared(asked, text) : inTrees(asked, text));
    Showing showing = new Showing(name -> terminal.shown(batch.fileOf(name)));
    return found.inReadingOrder().stream().map(showing::of).toList();
  }

  private List<Problem> inTrees(Set<String> asked, LibraryText text) {
    Stream<Problem> unreadable = text.unreadable().stream().filter(problem -> asked.contains(problem.source().name()));
    return Stream.concat(unreadable, Compiler.trees(text, Compiler.sharedAsNeeded(text), id -> asked.contains("trees/" + id + ".md"))
        .flatMap(this::problems)).toList();
  }

  /** A fragment's problems show in the trees that take it in, so all are compiled, and only what was asked for is kept. */
  private List<Problem> withShared(Set<String> asked, LibraryText text) {
    Library library = Compiler.readShared(text);
    Stream<Problem> inTrees = Compiler.trees(text, library.shared(), id -> true)
        .flatMap(tree -> problems(tree).filter(problem -> asked.contains(tree.path()) || asked.contains(problem.source().name())));
    return Stream.concat(library.sharedProblems().stream().filter(problem -> asked.contains(problem.source().name())), inTrees).toList();
  }

  private Stream<Problem> problems(CompiledTree tree) {
    progress.step();
    return tree.problems().stream();
  }

  /** What a library does not take in: links, and what is no regular file. */
  private static List<Problem> missing(Set<String> asked, LibraryText text) {
    Set<String> unreadable = text.unreadable().stream().map(problem -> problem.source().name()).collect(toSet());
    return asked.stream().filter(name -> !text.texts().containsKey(name) && !unreadable.contains(name))
        .map(name -> Problem.at("file-unreadable", new Source(name, ""), Span.at(0)).with("why", "it is no regular file")).toList();
  }
}
