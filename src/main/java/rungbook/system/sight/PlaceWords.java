package rungbook.system.sight;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.Set;
import rungbook.markdown.Entry;
import rungbook.system.Names;

/** The items of a line that name places: {@code at furnace, thermostat}. */
public final class PlaceWords {

  private static final String AT = "at ";

  private PlaceWords() {}

  /**
   * Keys of the items that name a location, with or without {@code at}.
   *
   * @param locations keys of all locations
   */
  public static Set<String> in(Entry entry, Set<String> locations) {
    return entry.items().stream().map(PlaceWords::key).filter(locations::contains).collect(toUnmodifiableSet());
  }

  /** Whether an item names a place, known or not. */
  public static boolean isPlace(Entry.Item item, Set<String> locations) {
    return item.text().startsWith(AT) || locations.contains(key(item));
  }

  private static String key(Entry.Item item) {
    return Names.key(item.text().startsWith(AT) ? item.text().substring(AT.length()) : item.text());
  }
}
