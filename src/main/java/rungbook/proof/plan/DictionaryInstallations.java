package rungbook.proof.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.circuit.Dictionary;
import rungbook.circuit.Probe;
import rungbook.circuit.ReadingTable;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.circuit.network.Tolerance;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/**
 * Installations of a system's fault dictionary: the random ones first, then the corners of the tolerances. Keeps the
 * states it solved last.
 */
public final class DictionaryInstallations implements Installations {

  private static final long SEED = 1;

  /** Solved states in memory: more than a tree meets, and bounded, since a server keeps them while people edit. */
  private static final int MOST_STATES = 48;

  private final ControlSystem system;
  private final Samples samples;
  private final int drawn;
  private final Dictionary dictionary;
  private final List<String> cases;
  private final Set<String> sights;
  private final Map<String, List<String>> valued;
  private final ReentrantLock solving = new ReentrantLock(true);
  private final Map<CircuitState, SolvedState> solvedStates = new LinkedHashMap<>(16, 0.75f, true) {
    private static final long serialVersionUID = 1;

    @Override
    protected boolean removeEldestEntry(Map.Entry<CircuitState, SolvedState> eldest) {
      return size() > MOST_STATES;
    }
  };

  private record SolvedState(Set<Probe> probes, ReadingTable table) {}

  private DictionaryInstallations(ControlSystem system, Samples samples, int drawn) {
    this.system = system;
    this.drawn = drawn;
    this.samples = samples;
    this.dictionary = Dictionary.of(system, samples);
    this.cases = dictionary.cases();
    this.sights = system.sights().stream().map(seen -> Names.key(seen.name())).collect(Collectors.toUnmodifiableSet());
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

  /** The random installations, the same ones each time. */
  static List<Draw> draws(int drawn) {
    return Samples.seeded(SEED, drawn).draws();
  }

  static DictionaryInstallations of(ControlSystem system, List<Draw> draws, Samples corners) {
    var samples = new Samples(Stream.concat(draws.stream(), corners.draws().stream()).toList());
    return new DictionaryInstallations(system, samples, draws.size());
  }

  /** Only the few installations in which voltages are highest. */
  public static DictionaryInstallations atHighVoltage(ControlSystem system) {
    return new DictionaryInstallations(system, Samples.highVoltage(), 0);
  }

  @Override
  public List<String> cases() {
    return cases;
  }

  @Override
  public double likelihood(int caseNumber) {
    return caseNumber == 0 ? 0 : fault(caseNumber).likelihood();
  }

  private Fault fault(int caseNumber) {
    return system.faults().get(caseNumber - 1);
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
    return wired(probe.red()) && wired(probe.black());
  }

  private boolean wired(Terminal terminal) {
    return terminal.isGround() || dictionary.network().node(terminal.point(), terminal.place()).isPresent();
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
  public Observations in(CircuitState state, List<Probe> probes) {
    Cancellation.lock(solving);
    try {
      return solved(state, probes);
    } finally {
      solving.unlock();
    }
  }

  /** Solves no fault, so it costs a fraction of {@link #in}, and is not kept. */
  @Override
  public double[][] healthy(CircuitState state, List<Probe> probes) {
    ReadingTable table = dictionary.healthy(state, probes);
    double[][] readings = new double[probes.size()][];
    for (int probe = 0; probe < readings.length; probe++) {
      int from = table.offset(0, probe);
      readings[probe] = Arrays.copyOfRange(table.raw(), from, from + samples());
    }
    return readings;
  }

  private Observations solved(CircuitState state, List<Probe> probes) {
    SolvedState solved = solvedStates.get(state);
    if (solved == null || !solved.probes().containsAll(probes)) {
      Set<Probe> all = new HashSet<>(probes);
      all.addAll(solved == null ? Set.of() : solved.probes());
      List<Probe> ordered = all.stream().sorted(Comparator.comparing(Probe::toString)).toList();
      solved = new SolvedState(all, dictionary.table(state, ordered));
      solvedStates.put(state, solved);
    }
    return new TableObservations(solved.table());
  }

  @Override
  public int[] repaired(int caseNumber, Set<String> renewed) {
    int[] as = new int[samples()];
    for (int sample = 0; sample < as.length; sample++) {
      Set<String> open = dictionary.opened(caseNumber, sample);
      as[sample] = open.stream().filter(fuse -> !renewed.contains(fuse)).findFirst()
          .map(fuse -> openFuse(fuse).orElse(caseNumber)).orElse(0);
    }
    return as;
  }

  /** The case that is nothing but an open fuse or breaker. */
  private Optional<Integer> openFuse(String key) {
    Set<String> limbs = system.part(key).stream().flatMap(part -> part.branches().stream()).map(PartBranch::key)
        .collect(Collectors.toSet());
    for (int i = 1; i < cases.size(); i++) {
      Set<String> open = fault(i).effects().stream().filter(Effect.Open.class::isInstance)
          .map(effect -> ((Effect.Open) effect).branch()).collect(Collectors.toSet());
      if (open.equals(limbs) && open.size() == fault(i).effects().size()) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  @Override
  public String circumstances(int caseNumber, int sample) {
    Map<String, Effect.Lower> lowered = caseNumber == 0 ? Map.of() : fault(caseNumber).effects().stream()
        .filter(Effect.Lower.class::isInstance).map(Effect.Lower.class::cast)
        .collect(Collectors.toMap(Effect.Lower::part, lower -> lower));
    return system.parts(Part.Supply.class).map(supply -> {
      var volts = lowered.containsKey(supply.key()) ? lowered.get(supply.key()).volts() : supply.volts();
      double now = volts.at(samples.draws().get(sample).at(Tolerance.SUPPLY, supply.key()));
      return String.format(Locale.ROOT, "%s %.1f V", supply.name(), now);
    }).collect(Collectors.joining(", "));
  }

  private record TableObservations(ReadingTable table) implements Observations {

    @Override
    public void readings(int caseNumber, Probe probe, double[] into) {
      System.arraycopy(table.raw(), table.offset(caseNumber, table.probes().indexOf(probe)), into, 0, table.samples());
    }

    @Override
    public void seen(int caseNumber, String sight, boolean[] into) {
      int bit = table.sights().indexOf(sight); // another variant may have more values
      for (int sample = 0; sample < into.length; sample++) {
        into[sample] = bit >= 0 && table.seen(caseNumber, sample, bit);
      }
    }
  }
}
