package rungbook.proof.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.source.Witness;

/**
 * What a tree does with every two faults of its system at once. Shares are of the likelihood of the pairs that give the
 * complaint; a pair is as likely as two independent faults are together.
 *
 * @param tried how many pairs were tried
 * @param all how many pairs the system has
 * @param giving how many of those tried give the complaint
 * @param drawn installations
 * @param fates where they end, through all trees that take over
 * @param repaired what is named here and then repaired
 * @param both what of that ends "repaired and proved" with both gone
 * @param noticed what of it does not end so
 * @param missed what ends so although a fault is left that gives the complaint by itself
 * @param harmless what ends so with a fault left that does not give the complaint
 * @param masks the likeliest first
 */
public record EveryPair(int tried, int all, int giving, int drawn, Map<Journey.Fate, Double> fates, double repaired,
    double both, double noticed, double missed, double harmless, List<Mask> masks) {

  public EveryPair {
    fates = new EnumMap<>(fates);
    masks = List.copyOf(masks);
  }

  public double share(Journey.Fate fate) {
    return fates.getOrDefault(fate, 0.0);
  }

  /**
   * A fault that is found by itself, and not with another beside it.
   *
   * @param isMutual whether the other, too, is found by itself
   * @param fate mistaken or healthy
   * @param title of the step where most of it ends, in the tree {@code tree}
   * @param share of the pair's installations that ends so
   * @param likelihood of that, of all pairs that give the complaint
   */
  public record Mask(String masked, String by, boolean isMutual, Journey.Fate fate, String tree, String title,
      double share, double likelihood, Optional<Witness.Path> path) {}
}
