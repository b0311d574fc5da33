package rungbook.web.record;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import rungbook.text.Day;
import rungbook.text.English;
import rungbook.web.record.FieldRecord.FollowedPack;

/**
 * The results of practice as a practice page wrote them; {@code docs/practice.md} has their form.
 *
 * @param system its id
 * @param digest of the page: 64 hexadecimal digits, or the first 24
 * @param name what the learner wrote; may be empty
 */
public record PracticeResults(String id, String system, String digest, String name, List<Round> rounds,
    boolean isShort) implements Sent {

  /**
   * A fault that was looked for.
   *
   * @param exercise its code; empty if the learner chose the level
   * @param variant of the system; empty for the system itself, and in the short form
   * @param faults that were in the circuit
   * @param named what the learner took for them; empty in the short form if that was right
   * @param minutes of work
   * @param walkedMinutes of walking
   * @param unsafeCount how many unsafe acts there were
   * @param unsafe the acts in words; empty in the short form
   * @param way each act in words; empty in the short form
   * @param started empty in the short form
   */
  public record Round(int level, String exercise, String variant, List<String> faults, List<String> named,
      boolean isRight, double minutes, double walkedMinutes, int unsafeCount, List<String> unsafe, List<String> way,
      Optional<Instant> started) {

    /** In words, how long it took. */
    public String lasted() {
      return plain(minutes) + " min of work, " + plain(walkedMinutes) + " min of walking";
    }

    /** When it began; empty if that is not known. */
    public String day() {
      return started.map(at -> Day.andTime(at.atZone(ZoneId.systemDefault()))).orElse("");
    }

    private static String plain(double minutes) {
      return BigDecimal.valueOf(minutes).stripTrailingZeros().toPlainString();
    }
  }

  /** Rounds are only added. */
  @Override
  public int saves() {
    return rounds.size();
  }

  /** Practice follows no pack. */
  @Override
  public List<FollowedPack> packs() {
    return List.of();
  }

  /** How many were found, and how many acts were unsafe. */
  public List<String> sum() {
    var found = rounds.stream().filter(Round::isRight).count() + " of " + rounds.size() + " found";
    var unsafe = rounds.stream().mapToInt(Round::unsafeCount).sum();
    return unsafe == 0 ? List.of(found) : List.of(found, English.counted(unsafe, "unsafe act"));
  }
}
