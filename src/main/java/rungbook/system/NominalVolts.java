package rungbook.system;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The voltage that each terminal belongs to, from the words of the system: of the supply or the secondary winding that
 * it is connected to through any part but a transformer, or what the text says of the point if that is more.
 */
public final class NominalVolts {

  private final Vocabulary vocabulary;
  private final Map<Terminal, Set<Terminal>> adjacent = new HashMap<>();
  private final Map<Terminal, Double> volts = new HashMap<>();

  private NominalVolts(ControlSystem system) {
    this.vocabulary = system.vocabulary();
    system.parts().stream().filter(part -> !(part instanceof Part.Transformer || part instanceof Part.Supply))
        .flatMap(part -> part.branches().stream()).forEach(branch -> {
          adjacent.computeIfAbsent(branch.a(), t -> new HashSet<>()).add(branch.b());
          adjacent.computeIfAbsent(branch.b(), t -> new HashSet<>()).add(branch.a());
        });
    system.parts(Part.Supply.class).forEach(supply -> spread(supply.branches(), between(supply)));
    system.parts(Part.Transformer.class).filter(transformer -> transformer.branches().size() == 2)
        .forEach(transformer -> spread(transformer.branches().subList(1, 2), transformer.secondaryVolts()));
  }

  public static NominalVolts of(ControlSystem system) {
    return new NominalVolts(system);
  }

  /** In volts; 0 where neither the text nor the circuit says. */
  public double at(Terminal terminal) {
    Vocabulary.Point point = vocabulary.points().get(terminal.point());
    double written = point == null ? 0 : point.volts().orElse(0);
    return Math.max(written, volts.getOrDefault(terminal, 0.0));
  }

  public boolean isLine(Terminal terminal) {
    return at(terminal) >= Vocabulary.LINE_VOLTS;
  }

  /** Between the outer ends of the legs: 240 V of two legs of 120 V with ground between them. */
  private static double between(Part.Supply supply) {
    double each = supply.nominalVolts();
    double highest = 0;
    double lowest = 0;
    for (PartBranch leg : supply.branches()) {
      if (leg.a().isGround()) {
        lowest = -each;
      } else {
        highest = each;
      }
    }
    return highest - lowest;
  }

  /** Not through ground, which is one node everywhere and joins the control circuit to the line. */
  private void spread(List<PartBranch> sources, double value) {
    var queue = new ArrayDeque<Terminal>();
    sources.forEach(source -> queue.addAll(List.of(source.a(), source.b())));
    var seen = new HashSet<Terminal>();
    while (!queue.isEmpty()) {
      Terminal next = queue.remove();
      if (!next.isGround() && seen.add(next)) {
        volts.merge(next, value, Math::max);
        queue.addAll(adjacent.getOrDefault(next, Set.of()));
      }
    }
  }
}
