package rungbook.markdown;

import java.util.ArrayList;
import java.util.List;
import rungbook.source.Span;

/**
 * One {@code key: value} line.
 *
 * @param key as written; case does not count when it is looked for
 * @param value trimmed; a YAML list reads as its items with commas between
 * @param valueSpan where the value stands (with its quotes, if it has any)
 */
public record Entry(String key, Span keySpan, String value, Span valueSpan) {

  public boolean is(String name) {
    return key.equalsIgnoreCase(name);
  }

  /** One item of a comma-separated value. */
  public record Item(String text, Span span) {}

  /** The value's items, trimmed; an empty one between two commas is kept, so that it can be reported. */
  public List<Item> items() {
    var items = new ArrayList<Item>();
    int from = 0;
    for (int comma = value.indexOf(','); comma >= 0; comma = value.indexOf(',', from)) {
      items.add(item(from, comma));
      from = comma + 1;
    }
    items.add(item(from, value.length()));
    return items;
  }

  private Item item(int from, int to) {
    String raw = value.substring(from, to);
    String text = raw.strip();
    int indent = raw.indexOf(text);
    return new Item(text, writtenPlainly() ? valueSpan.part(from + indent, text.length()) : valueSpan);
  }

  /** A value in quotes or over several lines has no letter-by-letter place in the text. */
  private boolean writtenPlainly() {
    return valueSpan.length() == value.length();
  }
}
