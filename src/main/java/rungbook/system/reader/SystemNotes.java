package rungbook.system.reader;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.system.logic.ContactLogic;
import rungbook.system.logic.ControlState;

/** What can be solved, but is seldom meant: looked for in a system without problems, in its base. */
final class SystemNotes {

  static final Code LOAD_ALWAYS_ON = Code.of("load-always-on");
  static final Code POINT_WITHOUT_PART = Code.of("point-without-part");
  static final Code RUNG_NEVER_CLOSED = Code.of("rung-never-closed");
  static final Code SIGHT_NEVER_SET = Code.of("sight-never-set");
  static final Code SUPPLY_NOT_PROTECTED = Code.of("supply-not-protected");

  /** More positions than equipment of the trade has; the others are not looked at. */
  private static final int MOST_POSITIONS = 256;

  /** Boards, thermostats and their inputs are on whenever their circuit is. */
  private static final Set<String> WORKING = Set.of("coil", "motor", "heater", "load");

  private final SystemVariants systems;
  private final ControlSystem system;
  private final Document document;
  private final List<Problem> found = new ArrayList<>();

  private SystemNotes(SystemVariants systems, Document document) {
    this.systems = systems;
    this.system = systems.base();
    this.document = document;
  }

  static List<Problem> of(SystemVariants systems, Document document) {
    var notes = new SystemNotes(systems, document);
    if (!systems.base().parts().isEmpty()) {
      notes.loads();
      notes.points();
      notes.sights();
      notes.supplies();
    }
    return notes.found;
  }

  private void loads() {
    List<ControlState> positions = positions();
    ContactLogic logic = ContactLogic.of(system);
    var always = new HashSet<String>();
    var ever = new HashSet<String>();
    for (int i = 0; i < positions.size(); i++) {
      Set<String> on = logic.settle(positions.get(i)).loadsOn();
      ever.addAll(on);
      if (i == 0) {
        always.addAll(on);
      } else {
        always.retainAll(on);
      }
    }
    if (positions.size() > 1) {
      system.parts(Part.Load.class).filter(this::isWorking).forEach(load -> {
        if (always.contains(load.key())) {
          add(LOAD_ALWAYS_ON, load);
        } else if (!ever.contains(load.key())) {
          add(RUNG_NEVER_CLOSED, load);
        }
      });
    }
  }

  private boolean isWorking(Part.Load load) {
    return WORKING.stream().anyMatch(kind -> system.vocabulary().isKind(load.key(), kind));
  }

  /** Every position of the selectors; none if there are too many. */
  private List<ControlState> positions() {
    List<Map<String, String>> all = List.of(Map.of());
    for (Map.Entry<String, Vocabulary.Control> control : system.vocabulary().controls().entrySet()) {
      List<String> positions = control.getValue().positions();
      if (all.size() * (long) Math.max(1, positions.size()) > MOST_POSITIONS) {
        return List.of();
      }
      all = positions.isEmpty() ? all : all.stream()
          .flatMap(before -> positions.stream().map(position -> with(before, control.getKey(), position))).toList();
    }
    return all.stream().map(one -> new ControlState(one, Set.of(), Set.of(), Set.of(), Set.of())).toList();
  }

  private static Map<String, String> with(Map<String, String> before, String control, String position) {
    var more = new HashMap<>(before);
    more.put(control, position);
    return more;
  }

  private void points() {
    Set<Terminal> used = systems.all().flatMap(one -> one.parts().stream()).flatMap(part -> part.branches().stream())
        .flatMap(branch -> Stream.of(branch.a(), branch.b())).collect(Collectors.toSet());
    document.blocks("points").stream().flatMap(block -> block.entries().stream()).forEach(entry -> {
      Vocabulary.Point point = system.vocabulary().points().get(Names.key(entry.key()));
      if (point != null && !Names.key(entry.key()).equals(Terminal.GROUND)) {
        String unused = point.locations().stream()
            .filter(place -> !used.contains(new Terminal(Names.key(entry.key()), place))).sorted()
            .map(system.vocabulary()::locationName).collect(Collectors.joining(", "));
        if (!unused.isEmpty()) {
          found.add(Problem.at(POINT_WITHOUT_PART, document.source(), entry.keySpan()).with("name", point.name())
              .with("places", unused));
        }
      }
    });
  }

  /** A look at what nothing sets takes every answer, so a fault that no longer shows would go unnoticed. */
  private void sights() {
    Set<String> set = systems.all().flatMap(one -> one.sights().stream()).map(sight -> Names.key(sight.name()))
        .collect(Collectors.toSet());
    document.entries("sights").forEach(entry -> {
      Vocabulary.Sight sight = system.vocabulary().sights().get(Names.key(entry.key()));
      if (sight != null && sight.keys().stream().noneMatch(set::contains)) {
        found.add(Problem.at(SIGHT_NEVER_SET, document.source(), entry.keySpan()).with("name", sight.name()));
      }
    });
  }

  private void supplies() {
    Set<Terminal> taking = system.parts().stream()
        .flatMap(part -> part instanceof Part.Load ? part.branches().stream()
            : part instanceof Part.Transformer ? part.branches().stream().limit(1) : Stream.empty())
        .flatMap(branch -> Stream.of(branch.a(), branch.b())).collect(Collectors.toSet());
    Map<Terminal, Set<Terminal>> metal = adjacent(part -> part instanceof Part.Joint || part instanceof Part.Wire);
    Map<Terminal, Set<Terminal>> conductors = adjacent(part -> part instanceof Part.Joint || part instanceof Part.Wire
        || part instanceof Part.Cable || part instanceof Part.Switch);
    system.parts(Part.Supply.class).forEach(supply -> hotEnd(supply, metal)
        .filter(end -> reached(end, conductors).stream().anyMatch(taking::contains))
        .ifPresent(end -> add(SUPPLY_NOT_PROTECTED, supply)));
  }

  /** The first end of a supply that is not bonded to ground: what an overcurrent device has to be in. */
  private static Optional<Terminal> hotEnd(Part.Supply supply, Map<Terminal, Set<Terminal>> metal) {
    return supply.branches().stream().flatMap(leg -> Stream.of(leg.a(), leg.b()))
        .filter(end -> reached(end, metal).stream().noneMatch(Terminal::isGround)).findFirst();
  }

  private Map<Terminal, Set<Terminal>> adjacent(Predicate<Part> through) {
    var adjacent = new HashMap<Terminal, Set<Terminal>>();
    system.parts().stream().filter(through).flatMap(part -> part.branches().stream()).forEach(branch -> {
      adjacent.computeIfAbsent(branch.a(), end -> new HashSet<>()).add(branch.b());
      adjacent.computeIfAbsent(branch.b(), end -> new HashSet<>()).add(branch.a());
    });
    return adjacent;
  }

  /** Not on through ground, which joins every circuit. */
  private static Set<Terminal> reached(Terminal from, Map<Terminal, Set<Terminal>> adjacent) {
    var seen = new HashSet<>(Set.of(from));
    var queue = new ArrayDeque<>(List.of(from));
    while (!queue.isEmpty()) {
      Terminal at = queue.poll();
      if (!at.isGround()) {
        adjacent.getOrDefault(at, Set.of()).stream().filter(seen::add).forEach(queue::add);
      }
    }
    return seen;
  }

  private void add(Code code, Part part) {
    found.add(Problem.at(code, document.source(), part.span()).with("name", part.name()));
  }
}
