package rungbook.circuit.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungbook.system.Condition;

/**
 * What a fault does while conditions hold.
 *
 * @param trips contacts that are stuck once a condition has held
 * @param shown sights that are seen or not while a condition holds; the last one counts
 * @param shifted quantities that are in another range while a condition holds; the last one counts
 */
public record ConditionalEffects(List<Trip> trips, List<Shown> shown, List<Shifted> shifted) {

  public static final ConditionalEffects NONE = new ConditionalEffects(List.of(), List.of(), List.of());

  public ConditionalEffects {
    trips = List.copyOf(trips);
    shown = List.copyOf(shown);
    shifted = List.copyOf(shifted);
  }

  /** @param branch of the contact, by its index */
  public record Trip(int branch, boolean closed, Condition when) {}

  /** @param sight its key */
  public record Shown(String sight, boolean seen, Condition when) {}

  /** @param quantity its key */
  public record Shifted(String quantity, Spread range, Condition when) {}

  ConditionalEffects and(ConditionalEffects other) {
    return new ConditionalEffects(joined(trips, other.trips), joined(shown, other.shown),
        joined(shifted, other.shifted));
  }

  private static <T> List<T> joined(List<T> first, List<T> second) {
    return Stream.concat(first.stream(), second.stream()).toList();
  }

  /** Every condition, those of the trips first. */
  public List<Condition> conditions() {
    var all = new ArrayList<Condition>();
    trips.forEach(trip -> all.add(trip.when()));
    shown.forEach(one -> all.add(one.when()));
    shifted.forEach(one -> all.add(one.when()));
    return all;
  }
}
