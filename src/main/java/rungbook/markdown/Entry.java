package rungbook.markdown;

import java.util.ArrayList;
import java.util.List;
import rungbook.source.Span;

/**
 * One {@code key: value} line.
 *
 * @param key as written; lookups ignore case
 * @param value trimmed; a YAML list becomes its items separated by commas
 * @param valueSpan where the value is, including its quotes if it has any
 */
public record Entry(String key, Span keySpan, String value, Span valueSpan) {

  public boolean is(String name) {
    return key.equalsIgnoreCase(name);
  }

  /** One item of a comma-separated value. */
  public record Item(String text, Span span) {}

  /** The value's comma-separated items, trimmed. Empty items are kept, so they can be reported. */
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

  /** The characters of a quoted or multi-line value do not map one-to-one to the text. */
  private boolean writtenPlainly() {
    return valueSpan.length() == value.length();
  }
}
