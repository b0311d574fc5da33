package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.PartValue;
import rungbook.system.Vocabulary;
import rungbook.system.logic.ContactLogic;
import rungbook.system.logic.ControlState;

/**
 * Which loads of a healthy system are on: the logic says without voltages what the solved circuit says. With every
 * position of every control, and then with each source off, each interlock bypassed and each panel open.
 */
class ContactLogicAgreementTest {

  /** A load that takes no power shows a voltage that a capacitor makes, which contacts alone do not tell. */
  private static final PartValue INDICATOR = new PartValue.Rated(0.001);

  static List<String> systems() {
    return List.of(Systems.IDS);
  }

  @ParameterizedTest
  @MethodSource("systems")
  void loadsAreOnAsInTheSolvedCircuit(String id) {
    ControlSystem system = withASightForEveryLoad(Systems.read(id));
    var dictionary = Dictionary.of(system, new Samples(List.of(Draw.MIDDLE)));
    ContactLogic logic = ContactLogic.of(system);
    Set<String> loads = loads(system).collect(Collectors.toSet());
    var everOn = new HashSet<String>();
    states(system.vocabulary()).forEach(state -> {
      Set<String> on = new HashSet<>(logic.settle(new ControlState(state.positions(), state.off(), state.bypassed(),
          state.disconnected(), state.open())).loadsOn());
      on.retainAll(loads);
      assertEquals(seen(Whole.table(dictionary, state, List.of()), system), on, state::toString);
      everOn.addAll(on);
    });
    assertEquals(loads, everOn, "each load is on in some state");
  }

  private static Set<String> seen(ReadingTable table, ControlSystem system) {
    return loads(system).filter(load -> table.seen(0, 0, table.sights().indexOf(load))).collect(Collectors.toSet());
  }

  private static Stream<CircuitState> states(Vocabulary words) {
    return CircuitState.start(words).everyPosition(words).stream()
        .flatMap(state -> Stream.of(
            Stream.of(state),
            words.controls(Vocabulary.Role.ISOLATOR).stream().map(state::isolate),
            words.panels().stream().map(panel -> state.open(panel)),
            words.controls(Vocabulary.Role.INTERLOCK).stream()
                .map(interlock -> state.bypass(interlock).open(words.panels().get(0))),
            words.points().values().stream().filter(point -> point.name().length() == 1)
                .flatMap(point -> point.locations().stream().map(at -> Names.key(point.name()) + " at " + at))
                .map(state::disconnect))
            .flatMap(all -> all));
  }

  /** Without its faults: the logic is that of the healthy system. */
  private static ControlSystem withASightForEveryLoad(ControlSystem system) {
    return new ControlSystem(system.vocabulary(), system.parts(), List.of(), loads(system)
        .map(load -> new ControlSystem.SightCondition(load, new Condition.On(load))).toList(), system.strips());
  }

  private static Stream<String> loads(ControlSystem system) {
    return system.parts(Part.Load.class).filter(load -> !load.on().voltAmps().equals(INDICATOR))
        .map(Part::key);
  }
}
