package rungbook.cli;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
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
    Library library = Compiler.readShared(text);
    Problems found = new Problems();
    found.addAll(library.sharedProblems().stream().filter(problem -> asked.contains(problem.source().name())).toList());
    found.addAll(missing(asked, text));
    found.addAll(inTrees(asked, library).toList());
    Showing showing = new Showing(name -> terminal.shown(batch.fileOf(name)));
    return found.inReadingOrder().stream().map(showing::of).toList();
  }

  /** The trees that were asked for with all their problems; of the others only what lies in a fragment that was asked for. */
  private Stream<Problem> inTrees(Set<String> asked, Library library) {
    boolean fragments = asked.stream().anyMatch(name -> name.startsWith("shared/fragments/"));
    return library.text().in("trees/").entrySet().parallelStream()
        .filter(tree -> fragments || asked.contains(path(tree)))
        .flatMap(tree -> compile(tree, library).stream().filter(problem -> asked.contains(path(tree)) || asked.contains(problem.source().name())));
  }

  private List<Problem> compile(Map.Entry<String, Source> tree, Library library) {
    List<Problem> problems = Compiler.compile(tree.getKey(), tree.getValue(), library.shared(), library.text()).problems();
    progress.step();
    return problems;
  }

  private static String path(Map.Entry<String, Source> tree) {
    return "trees/" + tree.getKey() + ".md";
  }

  /** What a library does not take in: links, and what is no regular file. */
  private static List<Problem> missing(Set<String> asked, LibraryText text) {
    Set<String> unreadable = text.unreadable().stream().map(problem -> problem.source().name()).collect(toSet());
    return asked.stream().filter(name -> !text.texts().containsKey(name) && !unreadable.contains(name))
        .map(name -> Problem.at("file-unreadable", new Source(name, ""), Span.at(0)).with("why", "it is no regular file")).toList();
  }
}
