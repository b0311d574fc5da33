package rungbook.pack.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.ladder.Symbol;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.NominalVolts;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/**
 * The parts of a system that leads can touch, as they are drawn. Two contacts of one coil are the poles of a contactor;
 * a motor's windings that meet inside it are one motor; each side of a transformer is drawn by itself, as is a coil
 * without its contacts, because a drawing shows one voltage.
 */
final class Devices {

  private final ControlSystem system;
  private final NominalVolts volts;
  private final List<Subject> found = new ArrayList<>();

  private Devices(ControlSystem system, NominalVolts volts) {
    this.system = system;
    this.volts = volts;
  }

  static List<Subject> of(ControlSystem system, NominalVolts volts) {
    var devices = new Devices(system, volts);
    devices.contactsByCoil().forEach(devices::contacts);
    system.parts().stream().filter(part -> devices.coilOf(part).isEmpty()).forEach(devices::part);
    devices.branchesByInside().forEach(devices::body);
    return devices.found;
  }

  /** The coil that alone moves a contact. */
  private Optional<Part> coilOf(Part part) {
    return part instanceof Part.Switch contact && contact.closedWhen() instanceof Condition.On on
        && system.vocabulary().isKind(on.name(), "coil") ? system.part(on.name()) : Optional.empty();
  }

  private Map<String, List<Part>> contactsByCoil() {
    var byCoil = new LinkedHashMap<String, List<Part>>();
    system.parts().forEach(part -> coilOf(part)
        .ifPresent(coil -> byCoil.computeIfAbsent(coil.name(), name -> new ArrayList<>()).add(part)));
    return byCoil;
  }

  private void contacts(String coil, List<Part> contacts) {
    List<PartBranch> branches = contacts.stream().flatMap(contact -> contact.branches().stream()).toList();
    if (arePoles(branches)) {
      found.add(new Subject.Poles(coil, Symbol.CONTACT, true, branches.get(0), branches.get(1)));
    } else {
      contacts.forEach(contact -> branches(contact, contact.branches()));
    }
  }

  /** Two pairs of four different terminals of one voltage. */
  private boolean arePoles(List<PartBranch> branches) {
    Set<Terminal> corners = new HashSet<>();
    branches.forEach(branch -> corners.addAll(List.of(branch.a(), branch.b())));
    return branches.size() == 2 && corners.size() == 4
        && corners.stream().map(volts::isLine).distinct().count() == 1;
  }

  private void part(Part part) {
    if (part instanceof Part.Capacitor capacitor) {
      capacitor(capacitor);
    } else if ((part instanceof Part.Switch || part instanceof Part.Fuse) && arePoles(part.branches())) {
      found.add(
          new Subject.Poles(part.name(), symbol(part), false, part.branches().get(0), part.branches().get(1)));
    } else if (isDrawn(part)) {
      branches(part, part.branches());
    }
  }

  /** An input is inside its board, where no lead reaches it. */
  private boolean isDrawn(Part part) {
    return part instanceof Part.Switch || part instanceof Part.Fuse || part instanceof Part.Transformer
        || (part instanceof Part.Load && !system.vocabulary().isKind(part.name(), "input"));
  }

  private void branches(Part part, List<PartBranch> branches) {
    branches.stream().filter(branch -> !isInside(branch.a()) && !isInside(branch.b()))
        .forEach(branch -> found.add(new Subject.Row(branch.name(), List.of(branch.a(), branch.b()),
            List.of(symbol(part)))));
  }

  private Symbol symbol(Part part) {
    return Optional.ofNullable(system.vocabulary().parts().get(part.key())).map(known -> Symbol.ofKind(known.kind()))
        .orElse(Symbol.LOAD);
  }

  /** With the common post between the others, if there is one. */
  private void capacitor(Part.Capacitor capacitor) {
    List<PartBranch> sections = capacitor.branches();
    if (sections.size() == 2 && sections.get(0).b().equals(sections.get(1).b())) {
      found.add(new Subject.Row(capacitor.name(),
          List.of(sections.get(0).a(), sections.get(0).b(), sections.get(1).a()),
          List.of(Symbol.CAPACITOR, Symbol.CAPACITOR)));
    } else {
      branches(capacitor, sections);
    }
  }

  private record Inner(Part part, Terminal outer) {}

  private Map<Terminal, List<Inner>> branchesByInside() {
    var byInside = new LinkedHashMap<Terminal, List<Inner>>();
    for (Part part : system.parts()) {
      part.branches().forEach(branch -> Stream.of(branch.a(), branch.b()).filter(Devices::isInside)
          .forEach(inside -> byInside.computeIfAbsent(inside, node -> new ArrayList<>())
              .add(new Inner(part, inside.equals(branch.a()) ? branch.b() : branch.a()))));
    }
    return byInside;
  }

  /** Two windings, and the common lead between them. */
  private void body(Terminal inside, List<Inner> branches) {
    List<Inner> windings = branches.stream().filter(branch -> branch.part() instanceof Part.Load).toList();
    List<Inner> common = branches.stream().filter(branch -> !(branch.part() instanceof Part.Load)).toList();
    if (windings.size() == 2 && common.size() == 1) {
      found.add(new Subject.Row(inside.point(),
          List.of(windings.get(0).outer(), common.get(0).outer(), windings.get(1).outer()),
          List.of(Symbol.WINDING, Symbol.WINDING)));
    }
  }

  private static boolean isInside(Terminal terminal) {
    return terminal.place().isEmpty();
  }
}
