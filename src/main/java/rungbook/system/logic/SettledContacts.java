package rungbook.system.logic;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.system.Part;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/** A system that has settled: which loads are on, and which points are live. */
public final class SettledContacts {

  private static final Set<String> POWER_LOADS = Set.of("motor", "heater");

  private final ContactLogic logic;
  private final Relays relays;
  private final ControlState state;
  private final Hands hands;
  private final Potentials potentials;

  SettledContacts(ContactLogic logic, Relays relays, ControlState state, Hands hands) {
    this.logic = logic;
    this.relays = relays;
    this.state = state;
    this.hands = hands;
    this.potentials = logic.potentials(relays, hands);
  }

  /** The keys of the loads that are on. */
  public Set<String> loadsOn() {
    Set<String> on = new HashSet<>();
    on().forEach(load -> on.add(logic.loads().get(load).key()));
    return on;
  }

  /** Whether a point is at a dangerous voltage; a point at which no part ends is not. */
  public boolean isLive(Terminal terminal) {
    Integer point = logic.network().find(terminal);
    return point != null && potentials.isLive(point);
  }

  /** Whether a point would still be at a dangerous voltage at the moment when a switch opens. */
  public boolean isLiveWithout(String powerSwitch, Terminal terminal) {
    Integer point = logic.network().find(terminal);
    return point != null && logic.potentials(relays, without(powerSwitch)).isLive(point);
  }

  /**
   * The motors and heaters at line voltage that are on and get their current through a switch: they would lose their
   * voltage at the moment when the switch opens. One has the name of its assembly, if it is in one.
   */
  public List<String> fedThrough(String powerSwitch) {
    int[] powerLoads = on().filter(this::isPowerLoad).toArray();
    if (powerLoads.length == 0) {
      return List.of();
    }
    Hands opened = without(powerSwitch);
    Potentials rest = logic.potentials(relays, opened);
    return IntStream.of(powerLoads)
        .filter(load -> logic.volts(load, rest, opened) < logic.loads().get(load).onVolts().low())
        .mapToObj(load -> name(logic.loads().get(load))).toList();
  }

  private Hands without(String powerSwitch) {
    Set<String> off = new HashSet<>(state.off());
    off.add(powerSwitch);
    return new Hands(logic.network(), new ControlState(state.positions(), off, state.bypassed(),
        state.disconnected(), state.open()));
  }

  private IntStream on() {
    return IntStream.range(0, logic.loads().size()).filter(load -> relays.on[load]);
  }

  private boolean isPowerLoad(int load) {
    Vocabulary.Part named = logic.system().vocabulary().parts().get(logic.loads().get(load).key());
    return named != null && POWER_LOADS.contains(named.kind())
        && logic.volts(load, potentials, hands) >= Vocabulary.LINE_VOLTS;
  }

  /** The longest list of parts that a load is in is the machine; a shorter one may be its capacitor. */
  private String name(Part.Load load) {
    Vocabulary words = logic.system().vocabulary();
    return words.assemblies().entrySet().stream().filter(assembly -> assembly.getValue().contains(load.key()))
        .max(Map.Entry.comparingByValue(Comparator.comparingInt(Set::size)))
        .map(assembly -> words.parts().get(assembly.getKey())).map(Vocabulary.Part::name).orElse(load.name());
  }
}
