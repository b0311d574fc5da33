package rungbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import rungbook.circuit.Dictionary;
import rungbook.circuit.Leads;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.circuit.ReadingTable;
import rungbook.circuit.SpicePeer;
import rungbook.circuit.Whole;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Samples;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.reader.BaseSystem;

/**
 * The whole fault dictionary of the split system: 58 faults and the healthy system, 10 states, 256 samples, 30 pairs of
 * leads, on one thread, beside a part of it by ngspice.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx256m")
public class DictionaryBench {

  private static final int STATES = 10;
  private static final int PAIRS = 30;

  /** 59 cases with so many pairs each are the measured part; the whole is 59 × 10 × 256 × 30 readings. */
  private static final int PEER_PAIRS = 8;

  private ControlSystem system;
  private List<CircuitState> states;
  private List<Probe> probes;

  @Setup
  public void read() throws IOException {
    system = splitSystem();
    states = states();
    probes = probes();
  }

  private static ControlSystem splitSystem() throws IOException {
    Path file = Path.of("shared/systems/split-cooling-gas-furnace.md");
    return BaseSystem.read("split", DocumentReader.read(new Source(file.toString(), Files.readString(file))))
        .system();
  }

  /**
   * Apart, for to write its netlists it solves circuits one sample at a time, after which the compiled loops over
   * samples are slower.
   */
  @State(Scope.Benchmark)
  public static class Peer {

    private SpicePeer spice;

    @Setup
    public void write() throws IOException {
      spice = new SpicePeer(splitSystem(), PEER_PAIRS);
    }
  }

  private List<CircuitState> states() {
    var start = CircuitState.start(system.vocabulary());
    var heat = start.set("thermostat", "heating");
    var cool = start.set("thermostat", "cooling");
    return List.of(start, cool, heat, start.set("fan", "on"), heat.set("sequence", "warm-up"),
        heat.set("sequence", "trial"),
        cool.isolate("outdoor disconnect"), start.isolate("furnace switch"),
        cool.open("blower door").bypass("door switch"),
        heat.bypass("limit"));
  }

  /** Every pair of the terminals at the furnace, the thermostat and the condenser that trees measure. */
  private static List<Probe> probes() {
    var probes = new ArrayList<Probe>();
    addPairs(probes, "furnace", "R", "C", "Y", "W", "G");
    addPairs(probes, "thermostat", "R", "C", "Y", "W", "G");
    addPairs(probes, "condenser", "Y", "C", "coil Y side", "coil C side", "T1");
    return probes.subList(0, PAIRS);
  }

  private static void addPairs(List<Probe> probes, String place, String... points) {
    for (int i = 0; i < points.length; i++) {
      for (int j = i + 1; j < points.length; j++) {
        probes.add(Leads.at(place, MeterFunction.VOLTS, points[i], points[j]));
      }
    }
  }

  @Benchmark
  public double dictionary() {
    var dictionary = Dictionary.of(system, Samples.seeded(1, Samples.USUAL));
    double sum = 0;
    for (CircuitState state : states.subList(0, STATES)) {
      ReadingTable sheet = Whole.table(dictionary, state, probes);
      sum += sheet.reading(dictionary.cases().size() - 1, 0, PAIRS - 1);
    }
    return sum;
  }

  /** 472 of the dictionary's 4,531,200 readings by ngspice in one process, its start and its output file included. */
  @Benchmark
  public int ngspicePart(Peer peer) throws IOException, InterruptedException {
    return peer.spice.run().size();
  }
}
