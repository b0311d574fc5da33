package rungbook.web.views;

import java.util.List;

/**
 * A proof as a page shows it. Widths of bars are in percent.
 *
 * @param state of the tree, from its check and its proof
 * @param toDo what can hurt or mislead most first
 * @param behind what to say of the problems that may go away with the first ones; empty if there are none
 * @param walked what was walked, in a sentence
 * @param measures the testability figures
 * @param unmodeled titles of the checks of which the circuit knows nothing
 * @param variants of the system, the base first; empty if it has none
 * @param named the faults that the tree names, the least found first; {@code others} it does not name
 * @param map the tree's drawing with shares at its ways
 */
public record ProofView(StateView state, List<ToDoView> toDo, String behind, String walked, List<Fact> facts,
    List<Measure> measures, List<String> unmodeled, List<Fault> named, List<Fault> others, List<Ending> endings,
    List<Variant> variants, List<Check> checks, String map) {

  /** @param words what the tree does there */
  record Variant(String name, String share, String words) {}

  record Fact(String name, String value) {}

  /** @param outcome a word: found, partly found, missed; {@code mark} is its sign */
  record Fault(String name, String likelihood, String outcome, String mark, Bar found, List<Place> ends) {}

  /** @param width 0 to 100 */
  record Bar(String words, int width) {}

  /**
   * Where some of a fault's installations end.
   *
   * @param href empty for what is not in this tree
   * @param names whether the finding names the fault
   */
  record Place(String title, String href, String share, boolean names) {}

  /**
   * @param group of how many faults it leaves open, in words; of another tree, where that ends
   * @param excluded that good readings alone lead here, in words; else empty
   */
  record Ending(String kind, String letter, String title, String href, Bar likelihood, String group, String excluded,
      List<Arrived> arrived) {}

  record Arrived(String name, Bar share, boolean named) {}

  /** @param picture an SVG of the readings; {@code inWords} says the same in sentences */
  record Check(String title, String href, String picture, List<String> inWords) {}

  /**
   * A testability figure.
   *
   * @param name as in IEEE 1522
   * @param means what it counts, in a sentence
   */
  record Measure(String name, String value, String means) {}
}
