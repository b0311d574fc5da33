package rungbook.circuit.sequence;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import rungbook.system.Condition;

/** Turns a {@link Condition} into a test of a {@link RelayState}, the names looked up once. */
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

  /** A test, with the selectors as they stand. */
  interface Test {
    boolean of(RelayState standing, Map<String, String> positions);
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
    if (condition instanceof Condition.Stands stands) {
      return (s, p) -> stands.position().equals(p.get(stands.control()));
    }
    Predicate<RelayState> single = single(condition);
    return (s, p) -> single.test(s);
  }

  private Predicate<RelayState> single(Condition condition) {
    if (condition instanceof Condition.On on) {
      Integer load = loads.get(on.name());
      int state = load == null ? states.get(on.name()) : -1;
      return load != null ? s -> s.loads[load] == RelayState.ON : s -> s.states[state];
    }
    if (condition instanceof Condition.Humming humming) {
      int load = loads.get(humming.name());
      return s -> s.loads[load] == RelayState.HUMMING;
    }
    String name = ((Condition.Closed) condition).name();
    Integer contact = switches.get(name);
    int fuse = contact == null ? fuses.get(name) : -1;
    return contact != null ? s -> s.closed[contact] : s -> !s.blown[fuse];
  }
}
