package rungbook.web.service;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import rungbook.library.Library;
import rungbook.proof.coverage.TreeFindings;

/** What the trees of the library find together. It fills by itself, from the first request after a change. */
@ApplicationScoped
public class CoverageService {
  /** A page says after this time what is still to come. */
  private static final long PAGE_MILLIS = TimeUnit.SECONDS.toMillis(3);
  private final ProofService proofs;
  private @Nullable CoverageFilling filling;

  CoverageService(ProofService proofs) {
    this.proofs = proofs;
  }

  /**
   * What is known so far.
   *
   * @param trees those that are proved, in the order of the library
   * @param stopped those whose proof was stopped, since it ran too long
   * @param done how many of {@code all} trees need no more work
   */
  public record Found(List<TreeFindings> trees, List<TreeEntry> stopped, int done, int all) {
    public boolean isWhole() {
      return done == all;
    }
  }

  /** Waits for the length of a page's patience; what is not proved until then goes on. */
  public Found found(Library now) {
    var current = of(now);
    try {
      current.ask(PAGE_MILLIS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw ProofProblems.serverStops();
    }
    return current.found();
  }

  @SuppressWarnings("ReferenceEquality") // a library is replaced and never changed
  private synchronized CoverageFilling of(Library now) {
    var known = filling;
    if (known != null && known.library() == now) {
      return known;
    }
    end();
    var next = new CoverageFilling(proofs, now);
    filling = next;
    return next;
  }

  @PreDestroy
  synchronized void end() {
    if (filling != null) {
      filling.end();
    }
  }
}
