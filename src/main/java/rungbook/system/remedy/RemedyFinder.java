package rungbook.system.remedy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/** Finds what takes each fault of a system away: the parts that its effects are in. */
public final class RemedyFinder {

  private static final Function<SystemVariants, Map<String, Remedy>> REMEDIES = RemedyFinder::find;

  private final ControlSystem system;
  private final Map<String, String> partOfLimb = new HashMap<>();
  private final Map<String, Set<String>> limbsOfSwitch = new LinkedHashMap<>();

  private RemedyFinder(ControlSystem system) {
    this.system = system;
    system.parts().forEach(part -> part.branches()
        .forEach(limb -> partOfLimb.putIfAbsent(limb.key(), part.key())));
    system.vocabulary().controls().forEach((key, control) -> {
      if (control.role() == Vocabulary.Role.ISOLATOR) {
        limbsOfSwitch.put(key, limbs(key));
      }
    });
  }

  /** The remedy of each fault, by the fault's key: in the base, or else in the first variant that has the fault. */
  public static Map<String, Remedy> of(SystemVariants systems) {
    return systems.once(REMEDIES);
  }

  private static Map<String, Remedy> find(SystemVariants systems) {
    var remedies = new LinkedHashMap<String, Remedy>();
    systems.all().forEach(system -> {
      List<Fault> further = system.faults().stream().filter(fault -> !remedies.containsKey(fault.key())).toList();
      if (!further.isEmpty()) {
        var finder = new RemedyFinder(system);
        further.forEach(fault -> remedies.computeIfAbsent(fault.key(), key -> finder.remedy(fault)));
      }
    });
    return Map.copyOf(remedies);
  }

  private Remedy remedy(Fault fault) {
    return fault.thing().map(thing -> new Remedy(List.of(site(Stream.of(thing))), Optional.empty()))
        .orElseGet(() -> new Remedy(fault.effects().stream().filter(effect -> !effect.isOutsideCircuit())
            .map(effect -> site(effected(effect))).toList(), foundOff(fault)));
  }

  private Set<String> site(Stream<String> places) {
    var keys = new HashSet<String>();
    places.forEach(key -> {
      keys.add(key);
      Optional.ofNullable(partOfLimb.get(key)).ifPresent(keys::add);
    });
    system.vocabulary().assemblies().forEach((assembly, members) -> {
      if (members.stream().anyMatch(keys::contains)) {
        keys.add(assembly);
      }
    });
    return keys;
  }

  /** The keys of the limbs or parts that an effect is in. */
  private Stream<String> effected(Effect effect) {
    if (effect instanceof Effect.Open open) {
      return Stream.of(open.branch());
    }
    if (effect instanceof Effect.Bridge bridge) {
      return Stream.of(bridge.branch());
    }
    if (effect instanceof Effect.Raise raise) {
      return Stream.of(raise.branch());
    }
    if (effect instanceof Effect.Derate derate) {
      return Stream.of(derate.branch());
    }
    if (effect instanceof Effect.Hold hold) {
      return Stream.of(hold.branch());
    }
    if (effect instanceof Effect.Trip trip) {
      return Stream.of(trip.branch());
    }
    if (effect instanceof Effect.Cross cross) {
      return Stream.of(cross.branch(), cross.other());
    }
    return effect instanceof Effect.Join join ? joined(join) : Stream.of(part(effect));
  }

  private static String part(Effect effect) {
    if (effect instanceof Effect.Stop stop) {
      return stop.part();
    }
    if (effect instanceof Effect.Weaken weaken) {
      return weaken.part();
    }
    if (effect instanceof Effect.Overload overload) {
      return overload.part();
    }
    if (effect instanceof Effect.Stiffen stiffen) {
      return stiffen.part();
    }
    return effect instanceof Effect.Tap tap ? tap.part() : ((Effect.Lower) effect).part();
  }

  /**
   * Two points touch in the cable that has a conductor at both; where no cable has, in any part that ends at one of
   * them.
   */
  private Stream<String> joined(Effect.Join join) {
    List<String> cables = system.parts(Part.Cable.class)
        .filter(cable -> endsAt(cable, join.a()::equals) && endsAt(cable, join.b()::equals)).map(Part::key).toList();
    return !cables.isEmpty() ? cables.stream()
        : system.parts().stream().filter(part -> endsAt(part, end -> end.equals(join.a()) || end.equals(join.b())))
            .map(Part::key);
  }

  private static boolean endsAt(Part part, Predicate<Terminal> wanted) {
    return part.branches().stream().anyMatch(branch -> wanted.test(branch.a()) || wanted.test(branch.b()));
  }

  /** A power switch or breaker of which every pole is open, and nothing else: it was switched off, or it tripped. */
  private Optional<String> foundOff(Fault fault) {
    Set<String> open = fault.effects().stream().filter(Effect.Open.class::isInstance)
        .map(effect -> ((Effect.Open) effect).branch()).collect(Collectors.toSet());
    return open.isEmpty() || open.size() != fault.effects().size() ? Optional.empty()
        : limbsOfSwitch.entrySet().stream().filter(one -> open.equals(one.getValue())).map(Map.Entry::getKey)
            .findFirst();
  }

  private Set<String> limbs(String part) {
    return system.part(part).stream().flatMap(found -> found.branches().stream()).map(PartBranch::key)
        .collect(Collectors.toSet());
  }
}
