package rungbook.web.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A field record as a pack wrote it; {@code docs/field-record.md} has its form. Text that is not there is empty.
 *
 * @param saves grows with each change: of two records with one id the higher is newer
 * @param undone answers that were taken back
 * @param now where the work is, or ended
 * @param closed empty while the job goes on
 * @param left what was open, off, bypassed, disconnected or set at last
 * @param isShort whether it came as QR pictures, which leave out titles and expected windows
 */
public record FieldRecord(String id, int saves, Instant saved, String job, String notes, List<FollowedPack> packs,
    List<Answered> steps, List<Answered> undone, Stop now, Optional<Instant> closed, List<String> left, String why,
    boolean isShort) implements Sent {

  /**
   * A pack that was followed.
   *
   * @param digest 64 hexadecimal digits, or the first 24
   * @param revision as the pack shows it: a number, or {@code draft}
   */
  public record FollowedPack(String tree, String title, String digest, String revision, String system, String meter) {
    /** Its title, or the tree's name. */
    public String name() {
      return title.isEmpty() ? tree : title;
    }
  }

  /** A step as a place where the work was. */
  public record Stop(String tree, String step, String number, String title, List<String> says) {
    /** Its number and title, or its id. */
    public String name() {
      return title.isEmpty() ? step : (number + " " + title).strip();
    }
  }

  /**
   * An answer at a step.
   *
   * @param pack its place among the packs
   * @param way which way on was taken, from 0
   * @param first the reading before, near a limit
   * @param open what is open, off, bypassed, disconnected or set after it
   */
  public record Answered(Stop at, int pack, String kind, int way, String answer, String reading, String unit,
      String expected, String first, String note, Instant time, double minutes, List<String> open) {
    /** The reading with its unit; words have none. */
    public String measured() {
      boolean isNumber = !reading.isEmpty() && reading.chars().anyMatch(Character::isDigit);
      return isNumber ? (reading + " " + unit).strip() : reading;
    }
  }
}
