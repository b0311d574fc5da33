package rungbook.library.solving;

import java.util.Optional;
import rungbook.circuit.ControlPositions;
import rungbook.markdown.Document;
import rungbook.proof.plan.Budget;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;
import rungbook.system.reader.VariantsReader;

/**
 * A system whose circuit can be solved, or the reason why not.
 *
 * @param why empty if it can
 */
public record SolvableSystem(Optional<SystemVariants> systems, String why) {

  /** One that was solved before, with the same program and budget. */
  static SolvableSystem known(String id, Document document) {
    return new SolvableSystem(Optional.of(VariantsReader.systems(id, document)), "");
  }

  public static SolvableSystem of(String id, Document document, Budget budget) {
    VariantsReader.Read read = VariantsReader.read(id, document);
    ControlSystem system = read.systems().base();
    boolean isWrong = read.problems().stream()
        .anyMatch(problem -> Wording.of(problem).severity() == Severity.ERROR);
    if (isWrong || system.parts().isEmpty()) {
      return none("the circuit of its system cannot be built: check `shared/systems/" + id + ".md`");
    }
    int faults = system.faults().size() + system.pairs().size();
    if (faults > budget.faults()) {
      return none("its system has " + faults + " faults and pairs, and at most " + budget.faults() + " are tried");
    }
    return read.systems().all().flatMap(one -> tooManyPositions(one, budget).stream()).findFirst()
        .map(SolvableSystem::none).orElseGet(() -> new SolvableSystem(Optional.of(read.systems()), ""));
  }

  private static Optional<String> tooManyPositions(ControlSystem system, Budget budget) {
    return ControlPositions.counts(system).entrySet().stream().filter(fault -> fault.getValue() > budget.positions())
        .findFirst()
        .map(fault -> "the fault `" + system.vocabulary().faults().getOrDefault(fault.getKey(), fault.getKey())
            + "` may have blown a fuse in any of " + fault.getValue()
            + " positions of the controls that it depends on, and at most " + budget.positions() + " are tried");
  }

  private static SolvableSystem none(String why) {
    return new SolvableSystem(Optional.empty(), why);
  }
}
