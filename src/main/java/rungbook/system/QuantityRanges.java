package rungbook.system;

import java.util.List;

/**
 * What a quantity outside the circuit is, by state: the first range whose condition holds counts; if none does, there
 * is no reading.
 *
 * @param key of the quantity
 */
public record QuantityRanges(String key, List<Ranged> ranges) {

  public QuantityRanges {
    ranges = List.copyOf(ranges);
  }

  /**
   * A range while a condition holds.
   *
   * @param range in the unit of the quantity's kind
   */
  public record Ranged(Interval range, Condition when) {}
}
