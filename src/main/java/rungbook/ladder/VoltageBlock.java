package rungbook.ladder;

import java.util.List;

/**
 * The rungs of one source.
 *
 * @param title {@code 24 V from transformer}
 * @param isLine whether it is at line voltage
 */
public record VoltageBlock(String title, boolean isLine, Node left, Node right, List<Rung> rungs) {

  public VoltageBlock {
    rungs = List.copyOf(rungs);
  }
}
