package rungbook.proof;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;
import rungbook.markdown.DocumentReader;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.report.Proof;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Interval;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/**
 * A system of a lamp and a wire, with readings written down by hand: four installations, the last of them a corner. The
 * wire is at `A` and `B`; nothing is read while the switch is off.
 */
public final class MadeUp implements Installations {

  public static final Vocabulary WORDS = new Vocabulary("lamp", "Lamp",
      Map.of("hall", new Vocabulary.Location("hall", Optional.empty(), false), "attic",
          new Vocabulary.Location("attic", Optional.empty(), false)),
      Map.of("a", point("A"), "b", point("B"), "x", point("X")),
      Map.of("lever",
          new Vocabulary.Control("lever", Vocabulary.Role.SELECTOR, List.of("off", "on"), Set.of("hall"), false)),
      Map.of("glow", new Vocabulary.Sight("glow", Set.of(), List.of())), Map.of(),
      new TreeMap<>(Map.of("lamp dead", "lamp dead", "wire weak", "wire weak")),
      Map.of());

  private static final ControlSystem CIRCUIT = new ControlSystem(WORDS, List.of(),
      List.of(new Fault("lamp dead", Optional.empty(), List.of(new Effect.Stop("lamp")), 1),
          new Fault("wire weak", Optional.empty(), List.of(new Effect.Raise("wire", Interval.exactly(5))), 2)),
      List.of(), List.of());

  static final WalkTimes WALK_TIMES = new WalkTimes("hall", Map.of("attic", new WalkTimes.Walk("hall", 3)));

  private static final double[] OFF = {0, 0, 0, 0};

  private final Map<String, double[]> readings;

  /**
   * @param readings by case and meter, {@code lamp dead VOLTS}, or by case and sight, where more than 0 is seen; what
   * is left out reads 24 V, and all but the dead lamp glow
   */
  public MadeUp(Map<String, double[]> readings) {
    this.readings = readings;
  }

  private static Vocabulary.Point point(String name) {
    return new Vocabulary.Point(name, Set.of("hall", "attic"), OptionalDouble.empty());
  }

  public static Tree tree(String id, String steps) {
    return tree(id, "", steps);
  }

  /** @param symptoms more lines of the front matter */
  public static Tree tree(String id, String symptoms, String steps) {
    String text = "---\ntitle: " + id + "\ncomplaint: dark\nsystem: lamp\n" + symptoms + "---\n\n" + steps;
    var shared = new Shared(Map.of("lamp", WORDS), Map.of("lamp", new SystemVariants(CIRCUIT, List.of())), Map.of(),
        Map.of(), Map.of(), Map.of(), Set.of("one", "other"));
    return TreeReader.read(id, DocumentReader.read(new Source("trees/" + id + ".md", text)), shared).tree();
  }

  public Proving.Result result(Tree tree) {
    return Proving.prove(tree, this, WALK_TIMES, id -> Optional.empty(), Budget.USUAL);
  }

  /** With other trees of the library. */
  public Proof prove(Tree tree, Tree... others) {
    return Proving.prove(tree, this, WALK_TIMES,
        id -> Arrays.stream(others).filter(other -> other.id().equals(id)).findFirst(), Budget.USUAL).proved()
        .orElseThrow();
  }

  @Override
  public List<String> cases() {
    return List.of("healthy", "lamp dead", "wire weak");
  }

  @Override
  public double likelihood(int caseNumber) {
    return caseNumber;
  }

  @Override
  public int samples() {
    return 4;
  }

  @Override
  public int drawn() {
    return 3;
  }

  @Override
  public boolean models(Probe probe) {
    return !probe.red().point().equals("x");
  }

  @Override
  public boolean shows(String sight) {
    return sight.equals("glow");
  }

  @Override
  public String circumstances(int caseNumber, int sample) {
    return "house " + sample;
  }

  /** It has no fuse. */
  @Override
  public int[] repaired(int caseNumber, Set<String> gone, Set<String> renewed) {
    return new int[samples()];
  }

  @Override
  public Observations in(CircuitState state, List<Probe> probes) {
    boolean on = state.positions().get("lever").equals("on");
    return new Observations() {
      @Override
      public void readings(int caseNumber, Probe probe, double[] into) {
        double[] usual = {24, 24, 24, 24};
        double[] high = readings.getOrDefault(cases().get(caseNumber) + " " + MeterFunction.VOLTS, usual);
        double[] read = on ? readings.getOrDefault(cases().get(caseNumber) + " " + probe.meter(), high) : OFF;
        System.arraycopy(read, 0, into, 0, 4);
      }

      @Override
      public void seen(int caseNumber, String sight, boolean[] into) {
        double[] usual = caseNumber == 1 ? OFF : new double[] {1, 1, 1, 1};
        double[] seen = readings.getOrDefault(cases().get(caseNumber) + " " + sight, usual);
        for (int sample = 0; sample < into.length; sample++) {
          into[sample] = on && seen[sample] > 0;
        }
      }
    };
  }
}
