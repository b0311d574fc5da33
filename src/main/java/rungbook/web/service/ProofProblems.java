package rungbook.web.service;

import java.time.Duration;
import rungbook.web.http.ProblemException;
import rungbook.web.job.Job;

/** Why there is no proof now, and what to do about it. */
final class ProofProblems {

  private ProofProblems() {}

  static ProblemException tooManyWait() {
    return ProblemException.of(503, "Too many proofs at once", "too many proofs wait already", "try again in a moment");
  }

  static ProblemException stillProving(Duration patience) {
    return ProblemException.of(503, "Not proved yet", "it is not proved after " + patience.toSeconds() + " seconds",
        "ask again in a moment: the proof goes on, and its result is kept");
  }

  static ProblemException othersFirst(Duration patience) {
    return ProblemException.of(503, "Not proved yet",
        "other drafts were proved first, and it is not proved after " + patience.toSeconds() + " seconds",
        "try again in a moment");
  }

  /** @param setting that allows a longer proof */
  static ProblemException stopped(Job.StopReason reason, Duration limit, String setting) {
    return switch (reason) {
      case TOO_LONG -> ProblemException.of(503, "Not proved in time",
          "the proof was stopped after " + limit.toSeconds() + " seconds",
          "export the library and run `./rungbook prove`, which has no time limit, or raise `" + setting + "`");
      case REPLACED -> ProblemException.of(409, "Replaced", "a newer text of this tree is being proved",
          "ask again with the newest text");
      case NOBODY_WAITS -> ProblemException.of(503, "Stopped", "nobody waited for this proof any more", "ask again");
      case SERVER_STOPS -> serverStops();
    };
  }

  static ProblemException serverStops() {
    return ProblemException.of(503, "Rungbook is stopping", "the proof was stopped with it", "start it again");
  }
}
