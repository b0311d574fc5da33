package rungbook.library.solving;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Cancellation;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.Restorable;
import rungbook.proof.rules.FaultShowsNowhere;
import rungbook.proof.rules.TwoValuesAtOnce;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.system.SystemVariants;
import rungbook.system.WalkTimes;
import rungbook.system.reader.VariantsReader;
import rungbook.system.reader.WalkTimesReader;

/** A system's text, and its circuit once it was needed. */
final class PreparedSystem {

  private final String id;
  private final Source source;
  private final Making making;
  private final Document document;
  private final ReentrantLock building = new ReentrantLock(true);
  private @Nullable Circuit circuit;
  private @Nullable List<Problem> problems;

  /**
   * How a circuit is made.
   *
   * @param build the installations that are asked for
   * @param solvedBefore what earlier runs have solved of a system, within the same budget
   */
  record Making(Function<SystemVariants, Installations> build, Budget budget,
      Function<Source, Optional<byte[]>> solvedBefore) {}

  /** @param why says why there is no circuit; empty if there is one */
  record Circuit(Optional<Installations> installations, String why) {}

  PreparedSystem(String id, Source source, Making making) {
    this.id = id;
    this.source = source;
    this.making = making;
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

  /**
   * What its circuit shows to be wrong with the system itself, found once; empty where it cannot be proved. Waits while
   * another thread looks for it.
   */
  List<Problem> problems() {
    Cancellation.lock(building);
    try {
      if (problems == null) {
        problems = circuit().installations().isEmpty() ? List.of() : findProblems();
      }
      return problems;
    } finally {
      building.unlock();
    }
  }

  private List<Problem> findProblems() {
    SystemVariants systems = VariantsReader.systems(id, document);
    return Stream.concat(FaultShowsNowhere.inspect(systems, document).stream(),
        TwoValuesAtOnce.inspect(systems, document).stream()).toList();
  }

  private Circuit build() {
    Optional<byte[]> before = making.solvedBefore().apply(source);
    SolvableSystem solvable = before.isPresent() ? SolvableSystem.known(id, document)
        : SolvableSystem.of(id, document, making.budget());
    Optional<Installations> built = solvable.systems().map(making.build());
    if (before.isPresent() && built.isPresent() && built.get() instanceof Restorable earlier) {
      earlier.restore(before.get());
    }
    return new Circuit(built, solvable.why());
  }
}
