package rungbook.pack.drawing;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.ladder.Symbol;
import rungbook.system.ControlSystem;
import rungbook.system.NominalVolts;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;
import rungbook.system.TerminalStrip;

/** Finds what leads touch: the strip that a terminal is on, or else a part that it belongs to, or the end of a wire. */
final class Subjects {

  private final ControlSystem system;
  private final NominalVolts volts;
  private final Labels labels;
  private final List<Subject> devices;

  Subjects(ControlSystem system, NominalVolts volts, Labels labels) {
    this.system = system;
    this.volts = volts;
    this.labels = labels;
    this.devices = Devices.of(system, volts);
  }

  /** One subject if it holds all of the leads, else one for each lead, in their order. */
  List<Subject> of(List<Terminal> leads) {
    Optional<Subject> together = holding(leads);
    if (together.isPresent()) {
      return List.of(together.get());
    }
    List<Optional<Subject>> each = leads.stream().map(lead -> holding(List.of(lead))).toList();
    return each.stream().allMatch(Optional::isEmpty) ? List.of(alone(leads))
        : IntStream.range(0, leads.size())
            .mapToObj(lead -> each.get(lead).orElseGet(() -> alone(leads.subList(lead, lead + 1)))).toList();
  }

  private static Subject alone(List<Terminal> leads) {
    return new Subject.Row("", leads, Collections.nCopies(leads.size() - 1, Symbol.GAP));
  }

  private Optional<Subject> holding(List<Terminal> leads) {
    List<TerminalStrip> strips = system.strips().stream()
        .filter(strip -> leads.stream().anyMatch(strip.terminals()::contains)).toList();
    if (!strips.isEmpty()) {
      return strips.stream().filter(strip -> strip.terminals().containsAll(leads)).map(strip -> strip(strip, leads))
          .findFirst();
    }
    return devices.stream().filter(device -> device.terminals().containsAll(leads)).min(fitting(leads))
        .or(() -> wireEnds(leads));
  }

  /** A strip with two voltages is an error in the system's text; what is drawn has one. */
  private Subject strip(TerminalStrip strip, List<Terminal> leads) {
    List<Terminal> shown = strip.terminals().stream()
        .filter(terminal -> volts.isLine(terminal) == volts.isLine(leads.get(0)) || leads.contains(terminal)).toList();
    return new Subject.Row(strip.name(), shown, Collections.nCopies(shown.size() - 1, Symbol.NEIGHBOR));
  }

  /** A terminal between two parts belongs to the one it is named after, or else to the one that it feeds. */
  private Comparator<Subject> fitting(List<Terminal> leads) {
    return Comparator
        .comparing((Subject device) -> -leads.stream().filter(lead -> labels.isNamedAfter(lead, device)).count())
        .thenComparing(device -> -leads.stream().filter(device.fed()::contains).count());
  }

  private Optional<Subject> wireEnds(List<Terminal> leads) {
    return system.parts(Part.Cable.class)
        .map(cable -> new Subject.WireEnds("wire ends, " + cable.name(), loose(cable, leads.get(0).place())))
        .filter(ends -> ends.terminals().containsAll(leads)).map(Subject.class::cast).findFirst();
  }

  /** The ends of a cable at a place that are on no strip and no part. */
  private List<Terminal> loose(Part.Cable cable, String place) {
    return cable.branches().stream().flatMap(Subjects::ends).filter(end -> end.place().equals(place))
        .filter(end -> system.strips().stream().noneMatch(strip -> strip.terminals().contains(end)))
        .filter(end -> devices.stream().noneMatch(device -> device.terminals().contains(end))).toList();
  }

  private static Stream<Terminal> ends(PartBranch conductor) {
    return Stream.of(conductor.a(), conductor.b());
  }
}
