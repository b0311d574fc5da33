package rungbook.pack.path;

import java.util.List;

/**
 * What is open, off, bypassed, disconnected or called for as a step begins.
 *
 * @param certain on every path
 * @param possible on some paths only
 */
public record StepState(List<String> certain, List<String> possible) {

  public StepState {
    certain = List.copyOf(certain);
    possible = List.copyOf(possible);
  }
}
