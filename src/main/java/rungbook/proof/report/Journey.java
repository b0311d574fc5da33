package rungbook.proof.report;

import java.util.List;

/**
 * Where one case ends in the end, through all trees that take over.
 *
 * @param places the largest share first; together they are all installations that give the complaint
 * @param checks on average, in all trees together
 * @param minutes on average, walking included
 */
public record Journey(String fault, List<Place> places, double checks, double minutes) {

  public Journey {
    places = List.copyOf(places);
  }

  /** How a case ends. */
  public enum Fate {
    FOUND("found"), MISTAKEN("mistaken"), HEALTHY("healthy"), REFERRED("referred"), STUCK("no answer fits"),
    IN_A_CIRCLE("handed in a circle"), NOT_FOLLOWED("not followed");

    private final String words;

    Fate(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * An end.
   *
   * @param through the id of the tree to which the first one handed it; empty if it ends in the first
   * @param tree the id of the tree where it ends
   * @param title of the step where it ends; of a circle, the ids of the trees
   */
  public record Place(Fate fate, String through, String tree, String title, double share) {}

  /** The share that ends in one way. */
  public double share(Fate fate) {
    return places.stream().filter(place -> place.fate() == fate).mapToDouble(Place::share).sum();
  }
}
