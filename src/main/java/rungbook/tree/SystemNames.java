package rungbook.tree;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Role;

/** Looks a step's names up in the tree's system. A tree with no system may use any words. */
final class SystemNames {

  private static final int MOST_LISTED = 20;

  private final Optional<Vocabulary> system;
  private final Source source;
  private final List<Problem> problems;

  SystemNames(Optional<Vocabulary> system, Source source, List<Problem> problems) {
    this.system = system;
    this.source = source;
    this.problems = problems;
  }

  void location(Named name) {
    system.ifPresent(known -> expect("unknown-location", "location", name,
        known.locations().values().stream().map(Vocabulary.Location::name).toList()));
  }

  void point(Named name) {
    system.ifPresent(known -> expect("unknown-point", "point", name, known.points().values().stream().map(Vocabulary.Point::name).toList()));
  }

  void fault(Named name) {
    system.ifPresent(known -> expect("unknown-fault", "fault", name, known.faults().values()));
  }

  /** Splits {@code thermostat cooling} into control and position. */
  Optional<Setting> setting(String written, Span span) {
    String key = Names.key(written);
    if (system.isEmpty()) {
      int space = key.lastIndexOf(' ');
      return Optional.of(new Setting(space < 0 ? key : key.substring(0, space), key.substring(space + 1), span));
    }
    List<Control> selectors = system.get().controls().values().stream().filter(control -> control.role() == Role.SELECTOR).toList();
    Optional<Control> control = selectors.stream().filter(one -> key.startsWith(Names.key(one.name()) + " "))
        .max(Comparator.comparingInt(one -> one.name().length()));
    if (control.isEmpty()) {
      refuse("unknown-control", "control", new Named(written, span), selectors.stream()
          .flatMap(one -> one.positions().stream().map(position -> one.name() + " " + position)).toList());
      return Optional.empty();
    }
    String position = key.substring(Names.key(control.get().name()).length() + 1);
    if (!control.get().positions().contains(position)) {
      refuse("unknown-position", control.get().name(), new Named(position, span), control.get().positions());
      return Optional.empty();
    }
    return Optional.of(new Setting(Names.key(control.get().name()), position, span));
  }

  /** What a deed is done to. */
  void thing(Verb verb, Named name) {
    system.ifPresent(known -> {
      switch (verb) {
        case OPEN, CLOSE -> expect("unknown-thing", "panel", name, known.panels());
        case BYPASS -> expect("unknown-thing", "switch to bypass", name, known.controls(Role.INTERLOCK));
        case ISOLATE, TAG_OUT -> expect("unknown-thing", "power switch", name, known.controls(Role.ISOLATOR));
        case PROVE_DEAD -> point(name);
        case DISCHARGE -> ifPartsAreKnown(known, () -> expect("unknown-thing", "capacitor", name, capacitors(known)));
        case DISCONNECT, RECONNECT, REPLACE -> ifPartsAreKnown(known, () -> expect("unknown-thing", "part, point or control", name, known.things()));
        case RESTORE -> ifPartsAreKnown(known, () -> expect("unknown-thing", "panel, part, point or control", name, restorable(known)));
        case SET, KNOWN_SOURCE -> { }
      }
    });
  }

  private static List<String> capacitors(Vocabulary known) {
    return known.parts().values().stream().filter(part -> part.kind().equals("capacitor")).map(Part::name).toList();
  }

  private static List<String> restorable(Vocabulary known) {
    var names = new java.util.ArrayList<>(known.things());
    names.addAll(known.panels());
    return names;
  }

  private static void ifPartsAreKnown(Vocabulary known, Runnable look) {
    if (!known.parts().isEmpty()) {
      look.run();
    }
  }

  private void expect(String code, String kind, Named name, Collection<String> known) {
    String key = name.key();
    if (known.stream().noneMatch(one -> Names.key(one).equals(key))) {
      refuse(code, kind, name, known);
    }
  }

  /** Enough names to see what is meant; all hundred parts of a system would bury the message. */
  private static String listed(Collection<String> known) {
    String first = known.stream().limit(MOST_LISTED).collect(Collectors.joining(", "));
    return known.size() <= MOST_LISTED ? first : first + " and " + (known.size() - MOST_LISTED) + " more";
  }

  private void refuse(String code, String kind, Named name, Collection<String> known) {
    problems.add(Problem.at(code, source, name.span()).with("name", name.text()).with("kind", kind)
        .with("system", system.map(Vocabulary::id).orElse("")).with("known", listed(known)).near(Nearest.to(name.text(), known)));
  }
}
