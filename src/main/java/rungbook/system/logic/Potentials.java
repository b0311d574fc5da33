package rungbook.system.logic;

import java.util.Arrays;
import java.util.List;
import rungbook.system.Vocabulary;

/** The nominal voltage of every point while the contacts stay where they are. */
final class Potentials {

  /** The least share of its rated primary voltage with which a transformer feeds (common practice, no source). */
  private static final double PRIMARY_SHARE = 0.5;

  private static final int NO_SOURCE = -1;

  private final int[] joined;
  private final int[] island;
  private final double[] volts;

  Potentials(int points) {
    joined = new int[points];
    Arrays.setAll(joined, point -> point);
    island = new int[points];
    Arrays.fill(island, NO_SOURCE);
    volts = new double[points];
  }

  /** Joins two points by metal. */
  void join(int a, int b) {
    joined[root(a)] = root(b);
  }

  /** Connects sources, once all metal is joined. A transformer drives once its primary has voltage. */
  void drive(List<ContactNetwork.Source> sources) {
    boolean[] done = new boolean[sources.size()];
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < done.length; i++) {
        ContactNetwork.Source source = sources.get(i);
        if (!done[i] && isDriven(source)) {
          drive(root(source.limb().a()), root(source.limb().b()), source.volts(), i);
          done[i] = true;
          changed = true;
        }
      }
    }
  }

  /** In volts; 0 where no source is between two points. */
  double between(int a, int b) {
    int first = root(a);
    int second = root(b);
    return island[first] != island[second] ? 0 : Math.abs(volts[first] - volts[second]);
  }

  /** Whether a point is at a dangerous voltage to ground, or belongs to a source that is not grounded. */
  boolean isLive(int point) {
    int owner = island[root(point)];
    boolean grounded = owner == island[root(ContactNetwork.GROUND)];
    return owner != NO_SOURCE && (!grounded || between(point, ContactNetwork.GROUND) >= Vocabulary.LINE_VOLTS);
  }

  private int root(int point) {
    int at = point;
    while (joined[at] != at) {
      joined[at] = joined[joined[at]];
      at = joined[at];
    }
    return at;
  }

  private boolean isDriven(ContactNetwork.Source source) {
    ContactNetwork.Limb primary = source.primary();
    return primary == null || between(primary.a(), primary.b()) >= PRIMARY_SHARE * source.primaryVolts();
  }

  private void drive(int high, int low, double difference, int source) {
    if (island[low] == NO_SOURCE && island[high] == NO_SOURCE) {
      island[low] = source;
    }
    if (high == low || island[low] == island[high]) {
      return; // short-circuited, or in parallel with another source
    }
    if (island[low] == NO_SOURCE) {
      island[low] = island[high];
      volts[low] = volts[high] - difference;
    } else if (island[high] == NO_SOURCE) {
      island[high] = island[low];
      volts[high] = volts[low] + difference;
    } else {
      merge(island[high], island[low], volts[low] + difference - volts[high]);
    }
  }

  private void merge(int from, int to, double shift) {
    for (int point = 0; point < island.length; point++) {
      if (island[point] == from) {
        island[point] = to;
        volts[point] += shift;
      }
    }
  }
}
