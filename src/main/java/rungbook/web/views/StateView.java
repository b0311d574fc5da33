package rungbook.web.views;

import rungbook.proof.advice.TreeState;

/**
 * The state of a tree as pages and programs show it.
 *
 * @param symbol a sign; {@code words} says the same
 */
public record StateView(String symbol, String words) {

  public static StateView of(TreeState state) {
    return new StateView(state.symbol(), state.words());
  }
}
