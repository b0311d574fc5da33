package rungbook.proof.coverage;

import java.util.Optional;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Journey.Fate;

/**
 * What becomes of one fault on one complaint.
 *
 * @param gives the share of the fault's installations that gives the complaint; all else is about these
 */
public record Cell(double gives, Journey journey) {

  /** The worst that happens to more than a few. */
  public enum Result {
    FOUND, PARTLY_FOUND, NEVER_FOUND, IN_A_CIRCLE, NOT_FOLLOWED
  }

  public double found() {
    return journey.share(Fate.FOUND);
  }

  public Result result() {
    if (Share.isReported(journey.share(Fate.IN_A_CIRCLE))) {
      return Result.IN_A_CIRCLE;
    }
    if (!Share.isReported(1 - found())) {
      return Result.FOUND;
    }
    if (Share.isReported(found())) {
      return Result.PARTLY_FOUND;
    }
    return Share.isReported(journey.share(Fate.NOT_FOLLOWED)) ? Result.NOT_FOLLOWED : Result.NEVER_FOUND;
  }

  /** Where most of what is found is found. */
  public Optional<Journey.Place> place() {
    return journey.places().stream().filter(place -> place.fate() == Fate.FOUND).findFirst();
  }
}
