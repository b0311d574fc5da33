package rungbook.system.reader;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.source.Code;
import rungbook.source.Span;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.NominalVolts;
import rungbook.system.Part;
import rungbook.system.PowerLimit;
import rungbook.system.Terminal;
import rungbook.system.TerminalStrip;

/** Checks a system across its lines, once each line is right by itself. */
final class SystemChecks {

  static final Code CONTROL_WITHOUT_CONTACT = Code.of("control-without-contact");
  static final Code FREQUENCIES_DIFFER = Code.of("frequencies-differ");
  static final Code FUSE_OUTSIDE_CLASS_2 = Code.of("fuse-outside-class-2");
  static final Code LOAD_UNREACHABLE = Code.of("load-unreachable");
  static final Code NO_SUPPLY = Code.of("no-supply");
  static final Code STRIP_MIXES_VOLTAGES = Code.of("strip-mixes-voltages");
  static final Code SUPPLY_SHORTED = Code.of("supply-shorted");
  static final Code TRANSFORMER_OUTSIDE_CLASS_2 = Code.of("transformer-outside-class-2");

  private final ControlSystem system;
  private final SystemProblems problems;
  private final Span frontMatter;

  private SystemChecks(ControlSystem system, Document document, SystemProblems problems) {
    this.system = system;
    this.problems = problems;
    this.frontMatter = document.frontSpan();
  }

  static void inspect(ControlSystem system, Document document, SystemProblems problems) {
    var checks = new SystemChecks(system, document, problems);
    if (system.parts().isEmpty() || !problems.all().isEmpty()) {
      return; // a vocabulary without parts is enough to check trees; a wrong line would only cause more reports
    }
    checks.suppliesHaveOneFrequency();
    checks.transformersAreClass2();
    checks.fusesAreClass2();
    checks.loadsCanBeReached();
    checks.nothingIsShorted();
    checks.controlsDoSomething(document);
    checks.stripsHaveOneVoltage(document);
  }

  private void stripsHaveOneVoltage(Document document) {
    NominalVolts volts = NominalVolts.of(system);
    system.strips().stream().filter(strip -> strip.terminals().stream().anyMatch(volts::isLine))
        .forEach(strip -> strip.terminals().stream()
            .filter(terminal -> !volts.isLine(terminal) && !terminal.isGround()).findFirst()
            .ifPresent(terminal -> problems.add(STRIP_MIXES_VOLTAGES, lineOf(strip, document), "name", strip.name(),
                "terminal", system.vocabulary().pointName(terminal.point()))));
  }

  private static Span lineOf(TerminalStrip strip, Document document) {
    return document.blocks("strips").stream().flatMap(block -> block.entries().stream())
        .filter(entry -> entry.key().equals(strip.name())).findFirst().orElseThrow().keySpan();
  }

  /** The circuit is solved at one frequency. */
  private void suppliesHaveOneFrequency() {
    List<Part.Supply> supplies = system.parts(Part.Supply.class).toList();
    supplies.stream().filter(supply -> supply.hertz() != supplies.get(0).hertz())
        .forEach(supply -> problems.add(FREQUENCIES_DIFFER, supply.span(), "name", supply.name(), "first",
            supplies.get(0).name()));
  }

  private void transformersAreClass2() {
    class2().filter(t -> t.secondaryVolts() < t.primaryVolts()).forEach(t -> {
      if (t.noLoadVolts().high() > Class2.MOST_VOLTS) {
        problems.add(TRANSFORMER_OUTSIDE_CLASS_2, t.span(), "name", t.name(), "what", "gives up to "
            + Math.round(t.noLoadVolts().high() * 10) / 10.0 + " V with nothing connected");
      }
      if (t.voltAmps() > Class2.MOST_VOLT_AMPS) {
        problems.add(TRANSFORMER_OUTSIDE_CLASS_2, t.span(), "name", t.name(), "what",
            "is rated " + t.voltAmps() + " VA");
      }
    });
  }

  private Stream<Part.Transformer> class2() {
    return system.parts(Part.Transformer.class).filter(t -> t.limit() != PowerLimit.CLASS_1);
  }

  /** Only fuses that a transformer feeds are subject to Class 2, and only where it does not limit itself. */
  private void fusesAreClass2() {
    var fed = new HashSet<Terminal>();
    class2().filter(t -> t.limit() == PowerLimit.FUSE && t.branches().size() == 2)
        .forEach(t -> fed.addAll(List.of(t.branches().get(1).a(), t.branches().get(1).b())));
    var near = reached(fed);
    system.parts(Part.Fuse.class).filter(fuse -> !fuse.breaker())
        .filter(
            fuse -> fuse.branches().stream()
                .anyMatch(branch -> near.contains(branch.a()) && !nearSupply().contains(branch.a())))
        .filter(fuse -> fuse.ratedAmps() > Class2.mostFuseAmps(secondaryVolts()))
        .forEach(fuse -> problems.add(FUSE_OUTSIDE_CLASS_2, fuse.span(), "name", fuse.name(), "most",
            Math.round(Class2.mostFuseAmps(secondaryVolts()) * 100) / 100.0));
  }

  private double secondaryVolts() {
    return class2().mapToDouble(Part.Transformer::secondaryVolts).max().orElse(24);
  }

  private Set<Terminal> nearSupply() {
    var from = new HashSet<Terminal>();
    system.parts(Part.Supply.class)
        .forEach(s -> s.branches().forEach(branch -> from.addAll(List.of(branch.a(), branch.b()))));
    from.removeIf(Terminal::isGround);
    return reached(from);
  }

  private void loadsCanBeReached() {
    var from = new HashSet<Terminal>();
    system.parts(Part.Supply.class)
        .forEach(s -> s.branches().forEach(branch -> from.addAll(List.of(branch.a(), branch.b()))));
    if (from.isEmpty()) {
      problems.add(NO_SUPPLY, frontMatter, "name", system.vocabulary().title());
      return;
    }
    system.parts(Part.Transformer.class)
        .forEach(t -> t.branches().forEach(branch -> from.addAll(List.of(branch.a(), branch.b()))));
    var fed = reached(from);
    system.parts(Part.Load.class)
        .filter(
            load -> load.branches().stream().anyMatch(branch -> !fed.contains(branch.a()) || !fed.contains(branch.b())))
        .forEach(load -> problems.add(LOAD_UNREACHABLE, load.span(), "name", load.name()));
  }

  /** The terminals connected to {@code from} by branches of any part except transformers. */
  private Set<Terminal> reached(Set<Terminal> from) {
    return reached(from, part -> !(part instanceof Part.Transformer));
  }

  private Set<Terminal> reached(Set<Terminal> from, Predicate<Part> through) {
    Map<Terminal, Set<Terminal>> adjacent = new HashMap<>();
    system.parts().stream().filter(through).flatMap(part -> part.branches().stream()).forEach(branch -> {
      adjacent.computeIfAbsent(branch.a(), t -> new HashSet<>()).add(branch.b());
      adjacent.computeIfAbsent(branch.b(), t -> new HashSet<>()).add(branch.a());
    });
    var seen = new HashSet<>(from);
    var queue = new ArrayDeque<>(from);
    while (!queue.isEmpty()) {
      for (Terminal next : adjacent.getOrDefault(queue.poll(), Set.of())) {
        if (seen.add(next)) {
          queue.add(next);
        }
      }
    }
    return seen;
  }

  private void nothingIsShorted() {
    system.parts().stream().filter(part -> part instanceof Part.Supply || part instanceof Part.Transformer)
        .forEach(part -> part.branches().stream()
            .filter(branch -> reached(Set.of(branch.a()), SystemChecks::isMetal).contains(branch.b())).findFirst()
            .ifPresent(branch -> problems.add(SUPPLY_SHORTED, part.span(), "name", branch.name())));
  }

  private static boolean isMetal(Part part) {
    return part instanceof Part.Wire || part instanceof Part.Joint || part instanceof Part.Cable;
  }

  private void controlsDoSomething(Document document) {
    var used = new HashSet<String>();
    system.parts(Part.Switch.class).forEach(s -> {
      used.add(s.key());
      s.closedWhen().eachTerm(term -> noteControl(term, used));
    });
    system.parts(Part.Fuse.class).forEach(fuse -> used.add(fuse.key()));
    system.parts(Part.State.class).forEach(s -> Stream.concat(Stream.of(s.set()), s.reset().stream())
        .forEach(condition -> condition.eachTerm(term -> noteControl(term, used))));
    document.blocks("controls").stream().flatMap(block -> block.entries().stream())
        .filter(entry -> !used.contains(Names.key(entry.key())))
        .forEach(entry -> problems.add(CONTROL_WITHOUT_CONTACT, entry.keySpan(), "name", entry.key()));
  }

  private static void noteControl(Condition term, Set<String> used) {
    if (term instanceof Condition.Selected selected) {
      used.add(selected.control());
    }
  }
}
