package rungbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.proof.Proving;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.DictionaryInstallations;
import rungbook.proof.plan.Installations;
import rungbook.source.Source;
import rungbook.system.WalkTimes;
import rungbook.system.reader.BaseSystem;
import rungbook.system.reader.SystemReader;
import rungbook.system.reader.WalkTimesReader;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** A tree of forty steps on the furnace system: ten states, thirty pairs of leads, sixty faults. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ProofBench {

  private static final int DRAWN = 256;
  private static final List<
      String> STATES = List.of("thermostat off, fan on", "thermostat heating, fan on", "thermostat cooling, fan on",
          "thermostat off, fan auto", "thermostat heating, fan auto", "thermostat cooling, fan auto",
          "sequence warm-up", "sequence trial",
          "thermostat heating", "sequence warm-up, fan on");
  private static final List<String> LEADS = List.of("R, C", "Y, C", "W, C");

  private SystemReader.Read system;
  private WalkTimes walks;
  private Tree tree;
  private Installations solved;

  @Setup
  public void setUp() throws IOException {
    String name = "shared/systems/split-cooling-gas-furnace.md";
    Document document = DocumentReader.read(new Source(name, Files.readString(Path.of(name))));
    system = BaseSystem.read("split-cooling-gas-furnace", document);
    walks = WalkTimesReader.read(document);
    var shared = new Shared(Map.of("split cooling gas furnace", system.system().vocabulary()), Map.of(), Map.of(),
        Map.of(), Map.of(), Map.of(), Set.of());
    tree = TreeReader.read("forty", DocumentReader.read(new Source("trees/forty.md", text())), shared).tree();
    solved = DictionaryInstallations.of(system.system(), DRAWN);
    if (proveOnSolved().proved().isEmpty()) {
      throw new IllegalStateException("the sample is not proved: " + proveOnSolved().problems());
    }
  }

  /** What a proof costs when the circuit is solved. */
  @Benchmark
  public Proving.Result proveOnSolved() {
    return Proving.prove(tree, solved, walks, id -> Optional.empty(), Budget.USUAL);
  }

  /** The same from nothing: wiring, solving and walking. */
  @Benchmark
  public Proving.Result solveAndProve() {
    return Proving.prove(tree, DictionaryInstallations.of(system.system(), DRAWN), walks, id -> Optional.empty(),
        Budget.USUAL);
  }

  /** Each state is a task and three checks; a reading in the middle goes on, the rest goes on by another way. */
  private static String text() {
    var text = new StringBuilder("---\ntitle: Forty\ncomplaint: c\nsystem: split-cooling-gas-furnace\n---\n");
    for (int state = 0; state < STATES.size(); state++) {
      text.append("\n## State %d\n\n```task\nset: %s\nat: furnace\n```\n\n- done: [Check %d 0](#check-%d-0)\n"
          .formatted(state, STATES.get(state), state, state));
      for (int check = 0; check < LEADS.size(); check++) {
        String next = check + 1 < LEADS.size() ? "Check %d %d".formatted(state, check + 1)
            : state + 1 < STATES.size() ? "State " + (state + 1) : "Sound";
        text.append(
            "\n## Check %d %d\n\n```check\nmeasure: AC volts\nleads: %s\nat: furnace\nexpect: 0 to 30 V\n```\n\n"
                .formatted(state, check, LEADS.get(check)));
        text.append(
            "- 20 to 30: [%s](#%s)\n- under 20: [%s](#%s)\n- over 30: [High](#high)\n- no reading: [High](#high)\n"
                .formatted(next, next.toLowerCase().replace(' ', '-'), next, next.toLowerCase().replace(' ', '-')));
      }
    }
    return text
        + "\n## Sound\n\n```finding\nhealthy: yes\n```\n\n## High\n\n```finding\nfault: transformer on wrong tap\n"
        + "```\n";
  }
}
