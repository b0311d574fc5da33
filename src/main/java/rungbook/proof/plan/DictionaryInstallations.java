package rungbook.proof.plan;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.Dictionary;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.circuit.network.Tolerance;
import rungbook.circuit.sequence.HoldingCircuits;
import rungbook.proof.cases.FaultCases;
import rungbook.proof.cases.LazyDictionary;
import rungbook.proof.cases.LeftStates;
import rungbook.proof.cases.OpenedFuses;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.QuantityRanges;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.text.Decimals;

/**
 * Installations of a system's fault dictionary: the random ones first, then the corners of the tolerances.
 */
public final class DictionaryInstallations implements Installations, Restorable {

  private static final long SEED = 1;

  private final ControlSystem system;
  private final Samples samples;
  private final int drawn;
  private final FaultCases faultCases;
  private final LazyDictionary dictionary;
  private final CircuitNetwork network;
  private final List<String> cases;
  private final Set<String> sights;
  private final Set<String> quantities;
  private final Map<String, List<String>> valued;
  private final SolvedStates states;
  private final LeftStates left;
  private final Memory memory;
  private @Nullable OpenedFuses opened;

  private DictionaryInstallations(ControlSystem system, FaultCases faultCases, Samples samples, int drawn) {
    this.system = system;
    this.faultCases = faultCases;
    this.drawn = drawn;
    this.samples = samples;
    this.dictionary = new LazyDictionary(system, samples, faultCases.together());
    this.network = CircuitNetwork.of(system);
    this.cases = Dictionary.cases(faultCases.together());
    List<String> seen = system.sights().stream().map(sight -> Names.key(sight.name())).distinct().toList();
    this.sights = Set.copyOf(seen);
    this.quantities = system.quantities().stream().map(QuantityRanges::key).collect(Collectors.toUnmodifiableSet());
    this.states = new SolvedStates((state, wanted, table) -> dictionary.get().solve(Map.of(state, table), wanted), seen,
        cases.size(), samples.size());
    this.memory = HoldingCircuits.hasDelays(network) ? Memory.DELAYS
        : HoldingCircuits.anyIn(network) ? Memory.STATES : Memory.NOTHING;
    this.left = new LeftStates((state, wanted) -> dictionary.get().left(state, wanted));
    this.valued = system.vocabulary().sights().values().stream()
        .filter(sight -> !sight.values().isEmpty() && sight.keys().stream().anyMatch(sights::contains))
        .collect(Collectors.toMap(Vocabulary.Sight::key,
            sight -> sight.values().stream().map(Names::key).toList()));
  }

  /**
   * @param system one that was read without problems
   * @param drawn the number of random installations, usually 256
   */
  public static DictionaryInstallations of(ControlSystem system, int drawn) {
    return of(system, draws(drawn), Samples.corners());
  }

  /**
   * Random installations of pairs of faults, and of each fault by itself, which nobody follows: what is left of a pair
   * after a repair reads as that.
   *
   * @param pairs indexes of faults
   */
  public static DictionaryInstallations ofPairs(ControlSystem system, List<int[]> pairs, int drawn) {
    return new DictionaryInstallations(system, FaultCases.of(system, pairs), new Samples(draws(drawn)), drawn);
  }

  /** The random installations, the same ones each time. */
  static List<Draw> draws(int drawn) {
    return Samples.seeded(SEED, drawn).draws();
  }

  static DictionaryInstallations of(ControlSystem system, List<Draw> draws, Samples corners) {
    var samples = new Samples(Stream.concat(draws.stream(), corners.draws().stream()).toList());
    return new DictionaryInstallations(system, FaultCases.of(system), samples, draws.size());
  }

  /**
   * As few installations as show about how far readings go. They count as drawn, so that each has a part in how often a
   * fault gives a complaint.
   */
  public static DictionaryInstallations few(ControlSystem system) {
    return of(system, Samples.extremes().draws(), new Samples(List.of()));
  }

  @Override
  public List<String> cases() {
    return cases;
  }

  @Override
  public double likelihood(int caseNumber) {
    return faultCases.likelihood(caseNumber);
  }

  @Override
  public List<String> faults(int caseNumber) {
    return faultCases.faults(caseNumber);
  }

  @Override
  public int samples() {
    return samples.size();
  }

  @Override
  public int drawn() {
    return drawn;
  }

  @Override
  public boolean models(Probe probe) {
    return probe.isOutside() ? quantities.contains(probe.quantity()) : wired(probe.red()) && wired(probe.black());
  }

  private boolean wired(Terminal terminal) {
    return terminal.isGround() || network.node(terminal.point(), terminal.place()).isPresent();
  }

  @Override
  public boolean shows(String sight) {
    return sights.contains(sight) || valued.containsKey(sight);
  }

  @Override
  public List<String> values(String sight) {
    return valued.getOrDefault(sight, List.of());
  }

  @Override
  public Memory memory() {
    return memory;
  }

  @Override
  public Map<Integer, Integer> left(CircuitState state, BitSet cases) {
    return left.of(state, cases);
  }

  @Override
  public Observations in(CircuitState state, List<Probe> probes) {
    return states.in(state, probes);
  }

  @Override
  public int[] repaired(int caseNumber, Set<String> gone, Set<String> renewed) {
    Set<String> left = new HashSet<>(faults(caseNumber));
    left.removeAll(gone);
    int remaining = faultCases.with(left).orElse(caseNumber);
    int[] as = new int[samples()];
    for (int sample = 0; sample < as.length; sample++) {
      Set<String> open = new HashSet<>(opened().of(caseNumber, sample));
      open.removeAll(renewed);
      open.removeAll(opened().of(remaining, sample));
      as[sample] = open.stream().sorted().findFirst().map(fuse -> withOpenFuse(left, fuse).orElse(caseNumber))
          .orElse(remaining);
    }
    return as;
  }

  private synchronized OpenedFuses opened() {
    if (opened == null) {
      Dictionary built = dictionary.get();
      opened = OpenedFuses.of(cases.size(), samples(), one -> sample -> built.opened(one, sample));
    }
    return opened;
  }

  @Override
  public boolean isChanged() {
    return states.isChanged() || left.isChanged();
  }

  @Override
  public byte[] archive() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      var writer = new StatesWriter(out);
      writer.write(opened());
      writer.write(states.all());
      writer.write(left.all());
    } catch (IOException e) {
      throw new UncheckedIOException(e); // memory cannot fail to be written to
    }
    return bytes.toByteArray();
  }

  @Override
  public synchronized void restore(byte[] archive) {
    var reader = new StatesReader(new DataInputStream(new ByteArrayInputStream(archive)));
    try {
      OpenedFuses fuses = reader.opened(cases.size(), samples());
      states.restore(reader.states(states));
      left.restore(reader.left());
      opened = fuses;
    } catch (IOException | RuntimeException e) {
      // it is all solved anew
    }
  }

  /** The case of what is left with an open fuse or breaker beside it; of the open one alone where that is no case. */
  private Optional<Integer> withOpenFuse(Set<String> left, String fuse) {
    return faultCases.openFuse(fuse).flatMap(open -> {
      Set<String> both = new HashSet<>(left);
      both.add(open);
      return faultCases.with(both).or(() -> faultCases.with(Set.of(open)));
    });
  }

  @Override
  public String circumstances(int caseNumber, int sample) {
    Map<String, Effect.Lower> lowered = faultCases.effects(caseNumber).stream()
        .filter(Effect.Lower.class::isInstance).map(Effect.Lower.class::cast)
        .collect(Collectors.toMap(Effect.Lower::part, lower -> lower,
            (one, two) -> one.volts().low() <= two.volts().low() ? one : two));
    return system.parts(Part.Supply.class).map(supply -> {
      var volts = lowered.containsKey(supply.key()) ? lowered.get(supply.key()).volts() : supply.volts();
      double now = volts.at(samples.draws().get(sample).at(Tolerance.SUPPLY, supply.key()));
      return supply.name() + " " + Decimals.rounded(now, 1) + " V";
    }).collect(Collectors.joining(", "));
  }
}
