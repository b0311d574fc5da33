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
      return all(tests(all.of()));
    }
    if (condition instanceof Condition.Any any) {
      return any(tests(any.of()));
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

  private Test[] tests(List<Condition> conditions) {
    return conditions.stream().map(this::test).toArray(Test[]::new);
  }

  /** A loop, since the search for steady states asks all conditions in every round. */
  private static Test all(Test[] tests) {
    return (s, p) -> {
      for (Test test : tests) {
        if (!test.of(s, p)) {
          return false;
        }
      }
      return true;
    };
  }

  private static Test any(Test[] tests) {
    return (s, p) -> {
      for (Test test : tests) {
        if (test.of(s, p)) {
          return true;
        }
      }
      return false;
    };
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
