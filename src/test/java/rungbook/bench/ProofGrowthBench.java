package rungbook.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;
import rungbook.markdown.DocumentReader;
import rungbook.proof.Proving;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.source.Source;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/**
 * How the walk grows with faults, steps and samples, on readings made up as they are asked for: no circuit is solved.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class ProofGrowthBench {

  @Param({"10", "100", "1000"})
  public int faults;

  @Param({"10", "100", "1000"})
  public int checks;

  @Param({"64", "256"})
  public int samples;

  private Tree tree;
  private Installations installations;

  @Setup
  public void setUp() {
    Map<String, String> names = new LinkedHashMap<>();
    for (int i = 0; i < faults; i++) {
      names.put("fault " + i, "fault " + i);
    }
    var points = new LinkedHashMap<String, Vocabulary.Point>();
    for (int i = 0; i < checks; i++) {
      points.put("t" + i, new Vocabulary.Point("t" + i, Set.of("box"), OptionalDouble.empty()));
    }
    var words = new Vocabulary("made-up", "Made up",
        Map.of("box", new Vocabulary.Location("box", Optional.empty(), false)),
        points, Map.of(), Map.of(), Map.of(), names, Map.of());
    var shared = new Shared(Map.of("made up", words), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Set.of());
    tree = TreeReader.read("chain", DocumentReader.read(new Source("trees/chain.md", text())), shared).tree();
    installations = new MadeUp();
  }

  @Benchmark
  public Proving.Result prove() {
    return Proving.prove(tree, installations, new WalkTimes("", Map.of()), id -> Optional.empty(), Budget.USUAL);
  }

  /** Every fault walks on to the end: the steps walked are faults times checks. */
  private String text() {
    var text = new StringBuilder("---\ntitle: Chain\ncomplaint: c\nsystem: made-up\n---\n");
    for (int i = 0; i < checks; i++) {
      String next = i + 1 < checks ? "Check " + (i + 1) : "Sound";
      text.append("\n## Check %d\n\n```check\nmeasure: AC volts\nleads: T%d, T0\nat: box\nexpect: 0 to 60 V\n```\n\n"
          .formatted(i, i));
      text.append("- 20 to 60: [%s](#%s)\n- under 20: [%s](#%s)\n- over 60: [High](#high)\n"
          .formatted(next, next.toLowerCase().replace(' ', '-'), next, next.toLowerCase().replace(' ', '-')));
    }
    return text + "\n## Sound\n\n```finding\nhealthy: yes\n```\n\n## High\n\n```finding\nfault: fault 0\n```\n";
  }

  /** Readings from 0 to 40 V that follow from case, sample and point. */
  private final class MadeUp implements Installations {

    @Override
    public List<String> cases() {
      var cases = new ArrayList<String>();
      cases.add("healthy");
      for (int i = 0; i < faults; i++) {
        cases.add("fault " + i);
      }
      return cases;
    }

    @Override
    public double likelihood(int caseNumber) {
      return caseNumber == 0 ? 0 : 1;
    }

    @Override
    public int samples() {
      return samples;
    }

    @Override
    public int drawn() {
      return samples;
    }

    @Override
    public boolean models(Probe probe) {
      return true;
    }

    @Override
    public boolean shows(String sight) {
      return false;
    }

    @Override
    public String circumstances(int caseNumber, int sample) {
      return "sample " + sample;
    }

    /** It has no fuse. */
    @Override
    public int[] repaired(int caseNumber, Set<String> gone, Set<String> renewed) {
      return new int[samples()];
    }

    @Override
    public Observations in(CircuitState state, List<Probe> probes) {
      return new Observations() {
        @Override
        public void readings(int caseNumber, Probe probe, double[] into) {
          int seed = 31 * caseNumber + probe.red().point().hashCode();
          for (int sample = 0; sample < into.length; sample++) {
            into[sample] = (seed * 0x9E3779B9 + sample * 0x85EBCA6B >>> 8) * (40.0 / (1 << 24));
          }
        }

        @Override
        public void seen(int caseNumber, String sight, boolean[] into) {
          throw new IllegalStateException("nothing to see here");
        }
      };
    }
  }
}
