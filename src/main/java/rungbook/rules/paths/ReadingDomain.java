package rungbook.rules.paths;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import rungbook.tree.Answer;
import rungbook.tree.Readings.Taken;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Way;

/**
 * Cuts the readings of a meter at every limit of the checks that read them; overload and no reading are two more
 * pieces.
 */
final class ReadingDomain {

  private final long[] cuts;
  private final int pieces;

  private ReadingDomain(long[] cuts) {
    this.cuts = cuts;
    this.pieces = cuts.length - 1;
  }

  /** @param checks the checks with the same question; {@code readings} has theirs in the same order */
  static Domain of(List<Step.MeterCheck> checks, List<Readings> readings) {
    ReadingDomain domain = new ReadingDomain(cuts(readings));
    List<long[]> taken = new ArrayList<>();
    if (domain.pieces + 2 <= Domain.MOST) {
      for (int check = 0; check < checks.size(); check++) {
        taken.add(domain.taken(checks.get(check).ways(), readings.get(check)));
      }
    }
    return new Domain(domain.pieces + 2, taken);
  }

  private static long[] cuts(List<Readings> all) {
    int count = 2;
    for (Readings readings : all) {
      count += 2 * readings.spans().size();
    }
    long[] cuts = new long[count];
    cuts[0] = all.get(0).lowCount();
    cuts[1] = all.get(0).highCount() + 1;
    int next = 2;
    for (Readings readings : all) {
      for (Taken span : readings.spans()) {
        cuts[next++] = clamp(span.from(), cuts[0], cuts[1]);
        cuts[next++] = clamp(span.to() + 1, cuts[0], cuts[1]);
      }
    }
    Arrays.sort(cuts);
    return distinct(cuts);
  }

  private long[] taken(List<Way> ways, Readings readings) {
    long[] taken = new long[ways.size()];
    for (Taken span : readings.spans()) {
      taken[span.way()] = span.isEmpty() ? 0 : pieces(span);
    }
    add(readings.wayOfOverload(), 1L << pieces, taken);
    add(readings.wayOfNoReading(), 1L << (pieces + 1), taken);
    readings.elseWay().ifPresent(way -> taken[way] |= left(taken));
    for (int way = 0; way < taken.length; way++) {
      if (ways.get(way).answer() instanceof Answer.Unreadable) {
        taken[way] = Domain.ANY;
      }
    }
    return taken;
  }

  private static void add(OptionalInt way, long piece, long[] taken) {
    way.ifPresent(index -> taken[index] |= piece);
  }

  private long left(long[] taken) {
    long used = 0;
    for (long own : taken) {
      used |= own;
    }
    return (1L << pieces) - 1 & ~used;
  }

  private long pieces(Taken span) {
    int from = indexOf(clamp(span.from(), cuts[0], cuts[pieces]));
    int to = indexOf(clamp(span.to() + 1, cuts[0], cuts[pieces]));
    return from >= to ? 0 : (1L << to) - (1L << from);
  }

  private int indexOf(long cut) {
    return Arrays.binarySearch(cuts, cut);
  }

  private static long clamp(long count, long low, long high) {
    return Math.max(low, Math.min(high, count));
  }

  private static long[] distinct(long[] sorted) {
    int count = 0;
    for (int i = 0; i < sorted.length; i++) {
      if (i == 0 || sorted[i] != sorted[i - 1]) {
        sorted[count++] = sorted[i];
      }
    }
    return Arrays.copyOf(sorted, count);
  }
}
