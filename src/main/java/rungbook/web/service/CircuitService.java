package rungbook.web.service;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import rungbook.ladder.Ladder;
import rungbook.library.Library;
import rungbook.library.solving.SystemReadings;
import rungbook.proof.demand.OperatingTable;
import rungbook.proof.demand.ReadingRequest;
import rungbook.source.Source;
import rungbook.system.SystemVariants;

/** The circuits of the library's systems, kept until their text changes. */
@ApplicationScoped
public class CircuitService {
  private static final ReadingRequest WHAT_RUNS = new ReadingRequest("", "", "", List.of(), "", "");

  private final SystemReadings readings = new SystemReadings();
  private final ExecutorService ahead = new ThreadPoolExecutor(0, 1, 10, TimeUnit.SECONDS,
      new ArrayBlockingQueue<>(1), CircuitService::daemon, new ThreadPoolExecutor.DiscardPolicy());

  private static Thread daemon(Runnable work) {
    var thread = new Thread(work, "circuit");
    thread.setDaemon(true);
    return thread;
  }

  @PreDestroy
  void close() {
    ahead.shutdown();
  }

  /** Empty if its circuit cannot be solved: its problems say why. */
  public Optional<SystemVariants> system(String id, Source source) {
    return readings.system(id, source);
  }

  public Optional<OperatingTable> table(String id, Source source) {
    return readings.table(id, source);
  }

  /** The ladder of the base (an empty name) or of a variant. */
  public Optional<Ladder> ladder(String id, Source source, String variant) {
    return readings.ladder(id, source, variant);
  }

  /** Solves the healthy system while somebody looks at the page, so that the first reading does not wait for it. */
  public void solveAhead(String id, Library library) {
    ahead.execute(() -> readings.answer(id, "", WHAT_RUNS, library.text(), library.shared()));
  }

  public SystemReadings.Outcome answer(String id, String meter, ReadingRequest request, Library library) {
    return readings.answer(id, meter, request, library.text(), library.shared());
  }
}
