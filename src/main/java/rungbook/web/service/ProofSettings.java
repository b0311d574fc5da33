package rungbook.web.service;

import jakarta.enterprise.context.Dependent;
import jakarta.enterprise.inject.Produces;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How much a server proves at once, and how long it tries.
 *
 * @param savedWorkers how many saved trees are proved at once; {@code draftWorkers} how many drafts beside them
 * @param savedLimit how long the proof of a saved tree may run; {@code draftLimit} that of a draft
 * @param patience after which an asker gets an answer, whatever it is
 */
record ProofSettings(int savedWorkers, int draftWorkers, Duration savedLimit, Duration draftLimit, Duration patience) {

  /** A connection on which nothing moves for 45 seconds is closed, see {@code quarkus.http.idle-timeout}. */
  static final Duration USUAL_PATIENCE = Duration.ofSeconds(40);

  /** Reads them from the server's settings; a number that makes no sense is brought to the nearest that does. */
  static final class Configured {
    @Produces
    @Dependent
    static ProofSettings of(@ConfigProperty(name = "rungbook.proof.saved-workers") int savedWorkers,
        @ConfigProperty(name = "rungbook.proof.draft-workers") int draftWorkers,
        @ConfigProperty(name = "rungbook.proof.saved-seconds") int savedSeconds,
        @ConfigProperty(name = "rungbook.proof.draft-seconds") int draftSeconds) {
      return new ProofSettings(between(1, savedWorkers, 64), between(1, draftWorkers, 64),
          Duration.ofSeconds(between(1, savedSeconds, 3_600)),
          Duration.ofSeconds(between(1, draftSeconds, (int) USUAL_PATIENCE.toSeconds())), USUAL_PATIENCE);
    }

    private static int between(int least, int value, int most) {
      return Math.max(least, Math.min(most, value));
    }
  }
}
