package rungbook.ladder;

import java.util.List;
import java.util.Optional;
import rungbook.ladder.CircuitGraph.Limb;
import rungbook.system.Part;
import rungbook.system.Vocabulary;

/** Limbs that are connected without going through ground or a transformer's core. */
final class Island {

  private final CircuitGraph graph;
  private final List<Limb> limbs;

  /** @param limbs in the order of the text */
  Island(CircuitGraph graph, List<Limb> limbs) {
    this.graph = graph;
    this.limbs = List.copyOf(limbs);
  }

  CircuitGraph graph() {
    return graph;
  }

  List<Limb> limbs() {
    return limbs;
  }

  /** The legs of the first source; empty if no source is connected. */
  List<Limb> legs() {
    Optional<Limb> first = limbs.stream().filter(Limb::isSource).findFirst();
    return first.map(leg -> limbs.stream().filter(limb -> limb.isSource() && limb.of() == leg.of()).toList())
        .orElse(List.of());
  }

  boolean isLine() {
    return volts() >= Vocabulary.LINE_VOLTS;
  }

  /** Line voltage is first, what no source is connected to is last. */
  int rank() {
    return legs().isEmpty() ? 2 : isLine() ? 0 : 1;
  }

  /** Between the rails; 0 without a source. */
  private double volts() {
    List<Limb> legs = legs();
    if (legs.isEmpty()) {
      return 0;
    }
    Part of = legs.get(0).of();
    return of instanceof Part.Supply supply ? supply.nominalVolts() * supply.branches().size()
        : ((Part.Transformer) of).secondaryVolts();
  }

  VoltageBlock block(RungNumbers numbers) {
    RungFinder finder = new RungFinder(this, numbers);
    List<Rung> rungs = finder.rungs();
    return new VoltageBlock(title(), isLine(), finder.left(), finder.right(), rungs);
  }

  private String title() {
    List<Limb> legs = legs();
    if (legs.isEmpty()) {
      return limbs.stream().allMatch(graph::isGrounding) ? "Grounding conductors" : "Connected to no source";
    }
    return Math.round(volts()) + " V from " + legs.get(0).of().name();
  }
}
