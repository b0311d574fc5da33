package rungbook.system.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;
import rungbook.source.Span;
import rungbook.system.Interval;

/**
 * The comma-separated items of a part's line, as quantities and words.
 *
 * <p>A quantity is a number, or {@code low to high}, with words around it. The words are its key:
 * {@code picks up at 15 to 19 V} is 15 to 19 with the key {@code picks up at V}.
 */
final class PartTokens {

  private static final String NUMBER = "(-?\\d++(?:\\.\\d++)?)";
  private static final String UNIT = "((?:V|VA|A|W|kW|ohm|Hz|%|ft|AWG|C|uF|pF/ft|pF|pf|X/R|times|rounds|s|min|h)"
      + "(?: [^\\d]+)?)";
  private static final Pattern QUANTITY = Pattern.compile(NUMBER + "(?: to " + NUMBER + ")?\\s++" + UNIT);

  record Quantity(Interval value, Span span) {}

  private final Map<String, Quantity> quantities = new LinkedHashMap<>();
  private final List<Quantity> repeated = new ArrayList<>();
  private final List<Entry.Item> words = new ArrayList<>();
  private final Set<String> asked = new LinkedHashSet<>();

  /**
   * Reads the items.
   *
   * @param skip how many items to skip
   * @param repeats the key of a quantity that may occur several times
   */
  static PartTokens of(Entry entry, int skip, String repeats) {
    var tokens = new PartTokens();
    entry.items().stream().skip(skip).forEach(item -> tokens.take(item, repeats));
    return tokens;
  }

  private void take(Entry.Item item, String repeats) {
    int number = number(item.text());
    Matcher match = QUANTITY.matcher(item.text()).region(number, item.text().length());
    if (!match.matches()) {
      words.add(item);
      return;
    }
    double low = Double.parseDouble(match.group(1));
    double high = match.group(2) == null ? low : Double.parseDouble(match.group(2));
    var quantity = new Quantity(new Interval(low, high), item.span());
    String key = (item.text().substring(0, number).stripTrailing() + " " + match.group(3)).strip();
    if (key.equals(repeats)) {
      repeated.add(quantity);
    } else {
      quantities.put(key, quantity);
    }
  }

  /** The index of the first number, sign included; the length of the text if there is none. */
  private static int number(String text) {
    int at = 0;
    while (at < text.length() && !isDigit(text.charAt(at))) {
      at++;
    }
    return at > 0 && at < text.length() && text.charAt(at - 1) == '-' ? at - 1 : at;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  Optional<Quantity> find(String key) {
    asked.add(key);
    return Optional.ofNullable(quantities.get(key));
  }

  List<Quantity> repeated() {
    return repeated;
  }

  Map<String, Quantity> quantities() {
    return quantities;
  }

  List<Entry.Item> words() {
    return words;
  }

  /** Removes an item that is exactly this text; returns whether there was one. */
  boolean takeWord(String text) {
    return words.removeIf(item -> item.text().equals(text));
  }

  /** Removes the items that start with these words; returns the rest of each. */
  List<Entry.Item> takeAfter(String start) {
    var taken = words.stream().filter(item -> item.text().startsWith(start)).toList();
    words.removeIf(item -> item.text().startsWith(start));
    return taken.stream().map(item -> new Entry.Item(item.text().substring(start.length()).strip(), item.span()))
        .toList();
  }

  /** Removes the first item that has these words; empty if there is none. */
  Optional<Entry.Item> takeFirst(String having) {
    for (int i = 0; i < words.size(); i++) {
      if (words.get(i).text().contains(having)) {
        return Optional.of(words.remove(i));
      }
    }
    return Optional.empty();
  }

  /** Quantities that were never looked up. */
  List<Map.Entry<String, Quantity>> unasked() {
    return quantities.entrySet().stream().filter(e -> !asked.contains(e.getKey())).toList();
  }
}
