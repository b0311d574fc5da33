package rungbook.tree;

import java.util.List;
import rungbook.source.Span;

/**
 * What the customer sees, in the words of the system. All of it holds at once.
 *
 * @param call the controls that are set; every other one is at its first position
 * @param seen sights that are seen
 * @param notSeen sights that are not seen
 * @param notAllSeen sights of which at least one is not seen; without any, nothing is asked
 * @param span where the text begins to say so
 */
public record Symptoms(List<Called> call, List<NameRef> seen, List<NameRef> notSeen, List<NameRef> notAllSeen,
    Span span) {

  public Symptoms {
    call = List.copyOf(call);
    seen = List.copyOf(seen);
    notSeen = List.copyOf(notSeen);
    notAllSeen = List.copyOf(notAllSeen);
  }

  /**
   * A control of the call. All are keys.
   *
   * @param positions in one of which the control is when the complaint shows
   */
  public record Called(String control, List<String> positions) {

    public Called {
      positions = List.copyOf(positions);
    }

    @Override
    public String toString() {
      return control + " " + String.join(" or ", positions);
    }
  }
}
