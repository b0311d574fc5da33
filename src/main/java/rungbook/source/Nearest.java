package rungbook.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that the author probably meant. */
public final class Nearest {

  /** In characters; a longer name is not compared at all, so hostile names cost nothing. */
  private static final int LONGEST = 100;

  private Nearest() {}

  /**
   * The nearest of {@code names} by edit distance (Damerau's, adjacent swaps included), if at most a third of it
   * differs.
   */
  public static Optional<String> to(String written, Collection<String> names) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    String lower = written.toLowerCase(Locale.ROOT);
    return names.stream()
        .filter(name -> Math.abs(name.length() - lower.length()) <= most(lower))
        .map(name -> new Candidate(name, distance(lower, name.toLowerCase(Locale.ROOT))))
        .filter(candidate -> candidate.distance() <= most(lower))
        .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
        .map(Candidate::name);
  }

  private static int most(String written) {
    return Math.max(1, written.length() / 3);
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        d[i][j] = cheapest(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(int[][] d, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
    boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }

  private record Candidate(String name, int distance) {}
}
