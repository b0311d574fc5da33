package rungbook.system.sight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Entry;
import rungbook.system.Names;

/**
 * A line of {@code sights}, taken apart: {@code contactor buzzing: at condenser, when contactor humming}, or, with
 * values, {@code status light: at furnace, off when not control board on, 3 flashes when limit open, steady}.
 *
 * @param places keys of the locations
 * @param when of a sight without values
 */
public record SightLine(Entry entry, Set<String> places, Optional<Entry.Item> when, List<Value> values) {

  private static final String WHEN = "when ";
  private static final String VALUE_WHEN = " when ";

  public SightLine {
    places = Set.copyOf(places);
    values = List.copyOf(values);
  }

  /** A value as the text writes it, and the condition that it is shown in. */
  public record Value(String name, Entry.Item item, Optional<Entry.Item> when) {

    public String key() {
      return Names.key(name);
    }
  }

  /** @param locations keys of all locations of the system */
  public static SightLine of(Entry entry, Set<String> locations) {
    Set<String> places = PlaceWords.in(entry, locations);
    Optional<Entry.Item> when = Optional.empty();
    List<Value> values = new ArrayList<>();
    for (Entry.Item item : entry.items()) {
      if (item.text().startsWith(WHEN)) {
        when = when.or(() -> Optional.of(rest(item, WHEN.length())));
      } else if (!PlaceWords.isPlace(item, locations)) {
        values.add(value(item));
      }
    }
    return new SightLine(entry, places, when, values);
  }

  private static Value value(Entry.Item item) {
    int at = (item.text() + " ").indexOf(VALUE_WHEN);
    return at < 0 ? new Value(item.text(), item, Optional.empty())
        : new Value(item.text().substring(0, at).strip(), item,
            Optional.of(rest(item, Math.min(item.text().length(), at + VALUE_WHEN.length()))));
  }

  private static Entry.Item rest(Entry.Item item, int from) {
    return new Entry.Item(item.text().substring(from).strip(), item.span());
  }
}
