package rungbook.proof.advice;

import java.util.Comparator;
import java.util.Map;
import rungbook.proof.rules.FaultCalledHealthy;
import rungbook.proof.rules.FaultFoundWrongly;
import rungbook.proof.rules.ProveDeadTellsNothing;
import rungbook.proof.rules.StrayReadsLive;
import rungbook.proof.rules.WrongRepairUnnoticed;
import rungbook.source.Code;

/**
 * How much harm it does to leave something as it is. First what can hurt somebody, then good units that are sent the
 * wrong way (each call on such a unit replaces a good part), then faults that are left in the unit, then faults that
 * are taken for others, then the rest.
 */
final class Harm {

  private static final int GOOD_UNITS = 1;
  private static final int FAULTS = 3;
  private static final int REST = 4;

  /** By code, where the code alone decides. */
  private static final Map<Code, Integer> RANKS = Map.of(ProveDeadTellsNothing.PROVE_DEAD_TELLS_NOTHING, 0,
      StrayReadsLive.STRAY_READS_LIVE, 0, WrongRepairUnnoticed.WRONG_REPAIR_UNNOTICED, 2,
      FaultCalledHealthy.FAULT_CALLED_HEALTHY, 2, FaultFoundWrongly.FAULT_FOUND_WRONGLY, FAULTS);

  static final Comparator<Recommendation> WORST_FIRST = Comparator.comparingInt(Harm::rank)
      .thenComparing(Comparator.comparingLong(Harm::twentieths).reversed());

  private Harm() {}

  static boolean isDangerous(Recommendation one) {
    return rank(one) == 0;
  }

  private static int rank(Recommendation one) {
    if (one instanceof Recommendation.Correct) {
      return RANKS.getOrDefault(one.problem().code(), REST);
    }
    if (one instanceof Recommendation.MoveLimit move) {
      return rankOf(move.example());
    }
    if (one instanceof Recommendation.CheckAnotherWay check) {
      return rankOf(check.example());
    }
    return one instanceof Recommendation.ClearGoodUnits ? GOOD_UNITS : FAULTS;
  }

  private static int rankOf(Recommendation.Example example) {
    return example.misrouted().healthy() ? GOOD_UNITS : FAULTS;
  }

  /** Nearly equal shares are in the order of the text. */
  private static long twentieths(Recommendation one) {
    return Math.round(20 * share(one));
  }

  private static double share(Recommendation one) {
    if (one instanceof Recommendation.MoveLimit move) {
      return shareOf(move.example());
    }
    if (one instanceof Recommendation.CheckAnotherWay check) {
      return shareOf(check.example());
    }
    return one instanceof Recommendation.ClearGoodUnits clear ? clear.alarm().share()
        : one instanceof Recommendation.FindFault find ? find.fault().likelihood() : 0;
  }

  private static double shareOf(Recommendation.Example example) {
    return example.misrouted().healthy() ? example.misrouted().share() : example.misrouted().likelihood();
  }
}
