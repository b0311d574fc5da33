package rungbook.bench;

import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.markdown.BareParser;
import rungbook.source.Source;

/**
 * A full check of one tree beside the bare Markdown parse of the same text. The limits are raised for the largest of
 * them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(value = 1, jvmArgsAppend = {"-Drungbook.limit.steps=20000", "-Drungbook.limit.headings=20000",
    "-Drungbook.limit.items=200000", "-Drungbook.limit.links=200000", "-Drungbook.limit.lines=500000"})
public class CheckBench {

  @Param({"10", "100", "1000", "10000"})
  public int steps;

  private final Library empty = LibraryCompiler
      .readShared(new LibraryText(new TreeMap<>(), new TreeMap<>(), List.of()));
  private String text;

  @Setup
  public void setUp() {
    text = Samples.tree(steps);
    CompiledTree tree = check();
    if (!tree.problems().isEmpty()) {
      throw new IllegalStateException("the sample has problems: " + tree.problems().get(0));
    }
  }

  @Benchmark
  public int parseOnly() {
    return BareParser.parse(text);
  }

  @Benchmark
  public CompiledTree check() {
    return LibraryCompiler.compile("sample", new Source("trees/sample.md", text), empty);
  }
}
