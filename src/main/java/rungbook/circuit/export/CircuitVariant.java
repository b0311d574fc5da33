package rungbook.circuit.export;

import static rungbook.text.JsonText.array;
import static rungbook.text.JsonText.object;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.Dictionary;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.SampledParameters;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.HoldingCircuits;
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Terminal;
import rungbook.text.JsonText;

/**
 * One form of a system: {@code b} its branches, {@code c} transformer cores, {@code s} sources, {@code l} loads,
 * {@code f} fuses, {@code m} switches with manual reset, {@code x} states, {@code v} sights, {@code h} what can hold
 * itself, {@code k} cases, {@code p} where leads can be. Branches, cases and pieces are numbers in the pools.
 */
final class CircuitVariant {

  private final ControlSystem system;
  private final Samples samples;
  private final Pools pools;
  private final CircuitNetwork network;
  private final SampledParameters parameters;
  private final NodeNumbers nodes;
  private final ConditionForm conditions;

  CircuitVariant(ControlSystem system, Samples samples, Pools pools) {
    this.system = system;
    this.samples = samples;
    this.pools = pools;
    network = CircuitNetwork.of(system);
    parameters = new SampledParameters(network, samples);
    nodes = new NodeNumbers(network, pools.nodes());
    conditions = new ConditionForm(pools.names());
  }

  /** The faults of each case: each by itself, then those that come together. */
  static List<List<Fault>> cases(ControlSystem system) {
    var cases = new ArrayList<List<Fault>>();
    system.faults().forEach(fault -> cases.add(List.of(fault)));
    system.pairs().forEach(pair -> cases.add(List.of(fault(system, pair.first()), fault(system, pair.second()))));
    return cases;
  }

  private static Fault fault(ControlSystem system, String key) {
    return system.faults().stream().filter(fault -> fault.key().equals(key)).findFirst().orElseThrow();
  }

  String json() {
    int[] branches = IntStream.range(0, network.branches().size()).map(i -> pools.branches().of(branch(i))).toArray();
    var form = new CaseForm(network, parameters, pools, new StampForm(nodes, pools.quantities()), branches);
    var healthy = new FaultedParameters(network, parameters, FaultCase.HEALTHY);
    var fields = new LinkedHashMap<String, String>();
    fields.put("b", array(IntStream.of(branches).boxed().toList()));
    fields.put("c", array(IntStream.range(0, network.cores().size()).mapToObj(i -> form.core(i, healthy)).toList()));
    List<Integer> currents = form.currents(healthy);
    fields.put("s", array(IntStream.range(0, currents.size())
        .mapToObj(i -> array(List.of(branches[network.sources().get(i).branch()], currents.get(i)))).toList()));
    fields.put("l", pieces(system.parts(Part.Load.class).map(this::load)));
    fields.put("f", pieces(system.parts(Part.Fuse.class).map(this::fuse)));
    fields.put("m", array(system.parts(Part.Switch.class).filter(Part.Switch::manualReset)
        .map(contact -> name(contact.key())).toList()));
    fields.put("x", pieces(system.parts(Part.State.class).map(this::state)));
    fields.put("v", pieces(system.sights().stream()
        .map(sight -> array(List.of(name(Names.key(sight.name())), conditions.of(sight.when()))))));
    fields.put("h", array(new TreeSet<>(HoldingCircuits.partsOf(network)).stream().map(this::name).toList()));
    fields.put("k", array(cases(form, healthy)));
    fields.put("p", leads());
    return object(fields);
  }

  private int name(String key) {
    return pools.names().of(key);
  }

  private String pieces(Stream<String> all) {
    return array(all.map(pools.pieces()::of).toList());
  }

  /** Nodes, kind, part, own name, admittances (−1 where no direct current passes), whether it is a wire. */
  private String branch(int i) {
    Branch branch = network.branches().get(i);
    ComplexRows released = parameters.alternating(BranchMode.CLOSED);
    var fields = new ArrayList<Object>(List.of(nodes.of(branch.a()), nodes.of(branch.b()), branch.kind().ordinal(),
        name(branch.part()), name(branch.key()), quantity(released, i), quantity(parameters.on, i),
        parameters.direct.re[i][0] == 0 ? -1 : quantity(parameters.direct, i), network.isWire(branch) ? 1 : 0));
    system.part(branch.part()).filter(Part.Switch.class::isInstance).map(Part.Switch.class::cast)
        .filter(contact -> branch.kind() == Branch.Kind.SWITCH).ifPresent(contact -> {
          fields.add(conditions.of(contact.closedWhen()));
          contact.opensWith().ifPresent(panel -> fields.add(name(Names.key(panel))));
        });
    return array(fields);
  }

  private int quantity(ComplexRows rows, int row) {
    return pools.quantities().of(rows.re[row], rows.im[row]);
  }

  /** Its name, its further condition, its pick-up and drop-out voltage, and the share of the first at which it hums. */
  private String load(Part.Load load) {
    int number = system.parts(Part.Load.class).toList().indexOf(load);
    return array(List.of(name(load.key()), conditions.of(load.onlyWhen()),
        pools.quantities().of(parameters.onVolts(number, load.key(), FaultCase.HEALTHY)),
        pools.quantities().of(parameters.offVolts[number]), JsonText.number(load.humShare())));
  }

  private String fuse(Part.Fuse fuse) {
    return array(List.of(name(fuse.key()), JsonText.number(fuse.ratedAmps() * fuse.opensAtTimes())));
  }

  /** Its name, when it is set and reset, after how many rounds, and of a timer its delays. */
  private String state(Part.State state) {
    var fields = new ArrayList<Object>(List.of(name(state.key()), conditions.of(state.set()),
        state.reset().map(conditions::of).orElse(conditions.of(Condition.never())),
        state.reset().isPresent() ? state.after() : -1));
    state.delay().ifPresent(delay -> fields.addAll(List.of(delay.onSeconds(), delay.offSeconds())));
    return array(fields);
  }

  /** The names of its faults, what it changes, and the fuses that it has opened in each installation. */
  private List<String> cases(CaseForm form, FaultedParameters healthy) {
    List<List<Fault>> cases = cases(system);
    Dictionary dictionary = Dictionary.of(system, samples, cases);
    return IntStream.range(0, cases.size()).mapToObj(i -> {
      FaultCase fault = cases.get(i).stream().map(one -> FaultCase.of(one, network)).reduce(FaultCase::and)
          .orElseThrow();
      var faulted = new FaultedParameters(network, parameters, fault);
      var fields = new ArrayList<Object>(List.of(
          array(cases.get(i).stream().map(one -> name(one.key())).toList()),
          pools.cases().of(form.of(fault, faulted, healthy))));
      opened(dictionary, i + 1).ifPresent(fields::add);
      return array(fields);
    }).toList();
  }

  /** The sets of open fuses, the empty one first, and which of them each installation has. */
  private Optional<String> opened(Dictionary dictionary, int caseNumber) {
    var sets = new ArrayList<Set<String>>(List.of(Set.of()));
    var which = new StringBuilder();
    for (int sample = 0; sample < samples.size(); sample++) {
      Set<String> open = dictionary.opened(caseNumber, sample);
      if (!sets.contains(open)) {
        sets.add(open);
      }
      which.append(Integer.toString(sets.indexOf(open), Character.MAX_RADIX));
    }
    return sets.size() == 1 ? Optional.empty()
        : Optional.of(array(sets.stream().map(this::names).toList()) + "," + JsonText.string(which.toString()));
  }

  private String names(Collection<String> keys) {
    return array(keys.stream().sorted().map(this::name).toList());
  }

  /** Each point at each of its places, and its node, where the circuit has one. */
  private String leads() {
    var leads = new ArrayList<String>();
    system.vocabulary().points().forEach((point, words) -> words.locations().stream().sorted()
        .forEach(place -> network.node(new Terminal(point, place))
            .ifPresent(node -> leads.add(array(List.of(name(point), name(place), nodes.of(node)))))));
    return array(leads);
  }
}
