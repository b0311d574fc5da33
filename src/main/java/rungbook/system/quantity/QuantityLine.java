package rungbook.system.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Entry;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary;
import rungbook.system.sight.PlaceWords;

/**
 * A line of {@code quantities}, taken apart: {@code temperature rise: temperature difference, at furnace, 40 to 70 F
 * when flame, 0 F}.
 *
 * @param places keys of the locations
 * @param kind what a meter measures
 */
public record QuantityLine(Entry entry, Set<String> places, Optional<Entry.Item> kind, List<Written> ranges) {

  private static final String WHEN = " when ";

  public QuantityLine {
    places = Set.copyOf(places);
    ranges = List.copyOf(ranges);
  }

  /** A range as the text writes it, and the condition that it has. */
  public record Written(Entry.Item item, String range, Optional<Entry.Item> when) {

    static Written of(Entry.Item item) {
      int at = item.text().indexOf(WHEN);
      return at < 0 ? new Written(item, item.text(), Optional.empty())
          : new Written(item, item.text().substring(0, at).strip(),
              Optional.of(new Entry.Item(item.text().substring(at + WHEN.length()).strip(), item.span())));
    }
  }

  /** @param locations keys of all locations of the system */
  public static QuantityLine of(Entry entry, Set<String> locations) {
    List<Entry.Item> items = new ArrayList<>(
        entry.items().stream().filter(item -> !PlaceWords.isPlace(item, locations)).toList());
    Optional<Entry.Item> kind = items.isEmpty() ? Optional.empty() : Optional.of(items.remove(0));
    return new QuantityLine(entry, PlaceWords.in(entry, locations), kind, items.stream().map(Written::of).toList());
  }

  /** What a tree may measure by this name; empty if the line does not say what a meter measures. */
  public Optional<Vocabulary.StatedQuantity> word() {
    return quantity().map(measured -> new Vocabulary.StatedQuantity(entry.key(), measured, places));
  }

  Optional<Quantity> quantity() {
    return kind.flatMap(item -> Quantity.named(item.text())).filter(Quantity::isOutsideCircuit);
  }
}
