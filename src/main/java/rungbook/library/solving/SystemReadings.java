package rungbook.library.solving;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import rungbook.ladder.Ladder;
import rungbook.library.LibraryText;
import rungbook.markdown.DocumentReader;
import rungbook.proof.demand.OperatingTable;
import rungbook.proof.demand.ReadingAnswer;
import rungbook.proof.demand.ReadingQuestion;
import rungbook.proof.demand.ReadingRequest;
import rungbook.proof.demand.ReadingSolver;
import rungbook.proof.demand.RequestReader;
import rungbook.proof.plan.Budget;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;
import rungbook.tree.Meter;
import rungbook.tree.Shared;
import rungbook.tree.reader.TreeReader;

/**
 * Answers readings on demand of the systems of a library. Keeps the most recently used systems and the circuits that it
 * solved last, until their text changes. Thread-safe.
 */
public final class SystemReadings {

  private static final String SYSTEMS = "shared/systems/";
  private static final int MOST_SYSTEMS = 8;
  private static final int MOST_SOLVERS = 24;

  private final Budget budget;
  private final Map<String, Known> systems = lru(MOST_SYSTEMS);
  private final Map<Solved, ReadingSolver> solvers = lru(MOST_SOLVERS);

  /**
   * What is computed of a system when it is first asked for.
   *
   * @param table of what runs
   * @param ladders of the base (an empty name) and the variants
   */
  private record Known(Source source, SolvableSystem system, AtomicReference<OperatingTable> table,
      Map<String, Ladder> ladders) {
    Known(Source source, SolvableSystem system) {
      this(source, system, new AtomicReference<>(), new ConcurrentHashMap<>());
    }
  }

  private record Solved(String text, String variant, String fault) {}

  /** What becomes of a request. */
  public sealed interface Outcome {

    record Answered(ReadingAnswer answer) implements Outcome {}

    /** Some of its names are unknown. */
    record Refused(List<Problem> problems) implements Outcome {}

    /** The system has no circuit that could be solved. */
    record Unsolvable(String why) implements Outcome {}
  }

  public SystemReadings() {
    this(Budget.inForce());
  }

  /** @param budget what a system may have at most */
  public SystemReadings(Budget budget) {
    this.budget = budget;
  }

  private static <K, V> Map<K, V> lru(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1;

      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }

  /**
   * @param id of the system, the file's name without {@code .md}
   * @param meter its id; empty for the usual one
   */
  public Outcome answer(String id, String meter, ReadingRequest request, LibraryText text, Shared shared) {
    Source source = text.in(SYSTEMS).get(id);
    if (source == null) {
      return refused(TreeReader.UNKNOWN_SYSTEM, "system", id, text.in(SYSTEMS).keySet());
    }
    Known system = known(id, source);
    Optional<Meter> named = meter.isBlank() ? Optional.of(shared.usualMeter())
        : Optional.ofNullable(shared.meters().get(Names.key(meter)));
    if (named.isEmpty()) {
      return refused(TreeReader.UNKNOWN_METER, "meter", meter, text.in("shared/meters/").keySet());
    }
    return system.system().systems().map(circuits -> answer(request, circuits, named.get(), source))
        .orElseGet(() -> new Outcome.Unsolvable(system.system().why()));
  }

  private Outcome answer(ReadingRequest request, SystemVariants systems, Meter meter, Source source) {
    RequestReader.Read read = RequestReader.read(request, systems, meter);
    return read.question().<Outcome>map(question -> new Outcome.Answered(solver(question, source).answer(question)))
        .orElseGet(() -> new Outcome.Refused(read.problems()));
  }

  /**
   * A system with its variants; empty if its circuit cannot be solved.
   *
   * @param source of the system
   */
  public Optional<SystemVariants> system(String id, Source source) {
    return known(id, source).system().systems();
  }

  /**
   * The ladder of a system; empty if its circuit cannot be solved.
   *
   * @param variant its name; that of the base is empty
   */
  public Optional<Ladder> ladder(String id, Source source, String variant) {
    Known known = known(id, source);
    return known.system().systems().map(systems -> known.ladders().computeIfAbsent(variant, name -> Ladder
        .of(systems.variants().stream().filter(one -> one.name().equals(name)).findFirst().map(Variant::system)
            .orElse(systems.base()))));
  }

  /** What runs in each position of the controls; empty if its circuit cannot be solved. */
  public Optional<OperatingTable> table(String id, Source source) {
    Known known = known(id, source);
    return known.system().systems().map(systems -> {
      OperatingTable table = known.table().get();
      if (table == null) {
        table = OperatingTable.of(systems.base());
        known.table().set(table);
      }
      return table;
    });
  }

  private synchronized Known known(String id, Source source) {
    Known known = systems.get(id);
    if (known == null || !known.source().text().equals(source.text())) {
      known = new Known(source, SolvableSystem.of(id, DocumentReader.read(source), budget));
      systems.put(id, known);
    }
    return known;
  }

  private synchronized ReadingSolver solver(ReadingQuestion question, Source source) {
    var solved = new Solved(source.text(), question.variant(), question.fault().map(Fault::key).orElse(""));
    return solvers.computeIfAbsent(solved, key -> ReadingSolver.of(question.system(), question.fault()));
  }

  private static Outcome refused(Code code, String field, String written, Collection<String> known) {
    return new Outcome.Refused(List.of(Problem.at(code, new Source(field, written), new Span(0, written.length()))
        .with("name", written).with("known", String.join(", ", known)).near(written, Nearest.to(written, known))));
  }
}
