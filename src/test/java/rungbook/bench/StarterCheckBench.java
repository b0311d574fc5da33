package rungbook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rungbook.library.Folder;
import rungbook.library.Library;
import rungbook.library.LibraryCompiler;
import rungbook.markdown.BareParser;
import rungbook.source.Source;

/** A check of each tree of the starter library, as the editor does on each change, beside the bare parses. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(1)
public class StarterCheckBench {

  private Library library;

  @Setup
  public void setUp() throws IOException {
    library = LibraryCompiler.compile(Folder.read(Path.of("")));
  }

  @Benchmark
  public int parseOnly() {
    return library.text().in("trees/").values().stream().mapToInt(source -> BareParser.parse(source.text())).sum();
  }

  /** Each as a text that nobody has seen. */
  @Benchmark
  public int check() {
    return library.text().in("trees/").entrySet().stream().mapToInt(tree -> LibraryCompiler
        .compile(tree.getKey(), new Source(tree.getValue().name(), tree.getValue().text()), library).problems().size())
        .sum();
  }
}
