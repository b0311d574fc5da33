package rungbook.bench;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.proof.Proving;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.DictionaryInstallations;
import rungbook.source.Source;
import rungbook.system.WalkTimes;
import rungbook.system.ZoneStar;
import rungbook.system.reader.BaseSystem;
import rungbook.system.reader.SystemReader;
import rungbook.system.reader.WalkTimesReader;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** How a proof from nothing grows with the parts of a system of 24 controls, in 512 MB. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = "-Xmx400m")
public class SystemGrowthBench {

  private static final int DRAWN = 256;
  private static final int CONTROLS = 24;

  @Param({"50", "100", "200", "400", "1000"})
  public int parts;

  private SystemReader.Read system;
  private WalkTimes walks;
  private Tree tree;

  @Setup
  public void setUp() {
    ZoneStar star = ZoneStar.ofParts(parts, CONTROLS);
    Document document = DocumentReader.read(new Source("shared/systems/zones.md", star.system()));
    system = BaseSystem.read("zones", document);
    if (!system.problems().isEmpty()) {
      throw new IllegalStateException("the sample has problems: " + system.problems());
    }
    walks = WalkTimesReader.read(document);
    var shared = new Shared(Map.of("zones", system.system().vocabulary()), Map.of(), Map.of(), Map.of(), Map.of(),
        Map.of(), Set.of());
    tree = TreeReader.read("zone", DocumentReader.read(new Source("trees/zone.md", star.tree())), shared).tree();
  }

  @Benchmark
  public Proving.Result solveAndProve() {
    return Proving.prove(tree, DictionaryInstallations.of(system.system(), DRAWN), walks, id -> Optional.empty(),
        Budget.USUAL);
  }
}
