package rungbook.web.views;

import java.util.List;
import java.util.Optional;

/**
 * The circuit of a system on its page.
 *
 * @param logic what boards do inside
 * @param left how many positions of the controls the table leaves out
 */
public record CircuitView(Answered answered, List<Line> logic, List<Row> rows, long left, List<Field> fields) {

  /**
   * What changes with each reading.
   *
   * @param narrow the ladder for a phone, as SVG; {@code wide} is that for a desk
   * @param reading empty until somebody asks for one
   * @param refused what is wrong with the request
   */
  public record Answered(String narrow, String wide, Optional<Reading> reading, List<ProblemView> refused) {
    public boolean isAnswered() {
      return reading.isPresent();
    }
  }

  /** A name and what is said about it. */
  public record Line(String name, String words) {}

  /** One position of the controls, what is seen then, and what is on. */
  public record Row(String settings, List<String> seen, List<String> on) {}

  /** A field of the form for a reading. */
  public record Field(String id, String name, String label, List<Option> options) {}

  public record Option(String value, String label, boolean isChosen) {}

  /**
   * An answer.
   *
   * @param leads what is read where; empty if only the activity was asked for
   * @param low empty, as {@code usual} and {@code high}, if there is no number
   */
  public record Reading(String leads, String settings, String fault, String low, String usual, String high,
      List<String> notes, List<String> on, List<String> humming, List<String> seen) {
    public boolean hasNumber() {
      return !low.isEmpty();
    }

    public boolean hasLeads() {
      return !leads.isEmpty();
    }
  }
}
