package rungbook.library;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.ControlPositions;
import rungbook.circuit.network.Cancellation;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.rules.FaultShowsNowhere;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Source;
import rungbook.source.Wording;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;
import rungbook.system.WalkTimes;
import rungbook.system.reader.VariantsReader;
import rungbook.system.reader.WalkTimesReader;

/** A system's text, and its circuit once it was needed. */
final class PreparedSystem {

  private final String id;
  private final Source source;
  private final Function<SystemVariants, Installations> build;
  private final Budget budget;
  private final Document document;
  private final ReentrantLock building = new ReentrantLock(true);
  private @Nullable Circuit circuit;

  /** @param why says why there is no circuit; empty if there is one */
  record Circuit(Optional<Installations> installations, String why) {

    static Circuit none(String why) {
      return new Circuit(Optional.empty(), why);
    }
  }

  PreparedSystem(String id, Source source, Function<SystemVariants, Installations> build, Budget budget) {
    this.id = id;
    this.source = source;
    this.build = build;
    this.budget = budget;
    this.document = DocumentReader.read(source);
  }

  Source source() {
    return source;
  }

  WalkTimes walkTimes() {
    return WalkTimesReader.read(document);
  }

  /** Builds the circuit, or waits while another thread does. If building was canceled, the next call starts again. */
  Circuit circuit() {
    Cancellation.lock(building);
    try {
      if (circuit == null) {
        circuit = build();
      }
      return circuit;
    } finally {
      building.unlock();
    }
  }

  /** What its circuit shows to be wrong with the system itself; empty where it cannot be proved. */
  List<Problem> problems() {
    return circuit().installations().isEmpty() ? List.of()
        : FaultShowsNowhere.inspect(VariantsReader.read(id, document).systems(), document);
  }

  private Circuit build() {
    VariantsReader.Read read = VariantsReader.read(id, document);
    ControlSystem system = read.systems().base();
    boolean isWrong = read.problems().stream()
        .anyMatch(problem -> Wording.of(problem).severity() == Severity.ERROR);
    if (isWrong || system.parts().isEmpty()) {
      return Circuit.none("the circuit of its system cannot be built: check `shared/systems/" + id + ".md`");
    }
    if (system.faults().size() > budget.faults()) {
      return Circuit
          .none("its system has " + system.faults().size() + " faults, and at most " + budget.faults() + " are tried");
    }
    return read.systems().all().flatMap(one -> tooManyPositions(one).stream()).findFirst().map(Circuit::none)
        .orElseGet(() -> new Circuit(Optional.of(build.apply(read.systems())), ""));
  }

  private Optional<String> tooManyPositions(ControlSystem system) {
    return ControlPositions.counts(system).entrySet().stream().filter(fault -> fault.getValue() > budget.positions())
        .findFirst()
        .map(fault -> "the fault `" + system.vocabulary().faults().getOrDefault(fault.getKey(), fault.getKey())
            + "` may have blown a fuse in any of " + fault.getValue()
            + " positions of the controls that it depends on, and at most " + budget.positions() + " are tried");
  }
}

