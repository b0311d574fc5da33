package rungbook.circuit.sequence;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import rungbook.system.Condition;

/** Compiles a {@link Condition} to a test of a {@link RelayState}; names are resolved to indices once. */
final class ConditionCompiler {

  private final Map<String, Integer> loads;
  private final Map<String, Integer> states;
  private final Map<String, Integer> switches;
  private final Map<String, Integer> fuses;

  ConditionCompiler(Map<String, Integer> loads, Map<String, Integer> states, Map<String, Integer> switches,
      Map<String, Integer> fuses) {
    this.loads = loads;
    this.states = states;
    this.switches = switches;
    this.fuses = fuses;
  }

  /** A compiled condition. */
  interface Test {

    /** Whether the condition holds, given the position of each selector by its key. */
    boolean of(RelayState relays, Map<String, String> positions);
  }

  Test test(Condition condition) {
    if (condition instanceof Condition.All all) {
      List<Test> tests = all.of().stream().map(this::test).toList();
      return (s, p) -> tests.stream().allMatch(t -> t.of(s, p));
    }
    if (condition instanceof Condition.Any any) {
      List<Test> tests = any.of().stream().map(this::test).toList();
      return (s, p) -> tests.stream().anyMatch(t -> t.of(s, p));
    }
    if (condition instanceof Condition.Not not) {
      Test test = test(not.of());
      return (s, p) -> !test.of(s, p);
    }
    if (condition instanceof Condition.Selected selected) {
      return (s, p) -> selected.position().equals(p.get(selected.control()));
    }
    Predicate<RelayState> single = single(condition);
    return (s, p) -> single.test(s);
  }

  private Predicate<RelayState> single(Condition condition) {
    if (condition instanceof Condition.On on) {
      return on(on.name());
    }
    if (condition instanceof Condition.Humming humming) {
      int load = index(loads, humming.name());
      return s -> s.loads[load] == RelayState.HUMMING;
    }
    return closed(((Condition.Closed) condition).name());
  }

  private Predicate<RelayState> on(String name) {
    if (loads.containsKey(name)) {
      int load = index(loads, name);
      return s -> s.loads[load] == RelayState.ON;
    }
    int state = index(states, name);
    return s -> s.states[state];
  }

  private Predicate<RelayState> closed(String name) {
    if (switches.containsKey(name)) {
      int contact = index(switches, name);
      return s -> s.closed[contact];
    }
    int fuse = index(fuses, name);
    return s -> !s.blown[fuse];
  }

  private static int index(Map<String, Integer> indices, String name) {
    return Objects.requireNonNull(indices.get(name), name);
  }
}
