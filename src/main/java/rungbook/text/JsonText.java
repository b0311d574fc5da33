package rungbook.text;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;

/** Compact JSON for data inside a page: no spaces, and no character that HTML reads. */
public final class JsonText {

  private static final String HEX = "0123456789abcdef";

  private JsonText() {}

  /** A string in its quotes. */
  public static String string(String text) {
    var out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c == '"' || c == '\\' || c == '<' || c == '&' || c == '\u2028' || c == '\u2029') {
        out.append("\\u").append(HEX.charAt(c >> 12)).append(HEX.charAt(c >> 8 & 15)).append(HEX.charAt(c >> 4 & 15))
            .append(HEX.charAt(c & 15));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }

  /** A number as short as it can be and still the same; a whole number has no point. */
  public static String number(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e15 ? Long.toString((long) number)
        : Double.toString(number);
  }

  /** An array of values that are JSON, or whole numbers. */
  public static String array(Collection<?> values) {
    return values.stream().map(Object::toString).collect(Collectors.joining(",", "[", "]"));
  }

  /** An object whose values are JSON, or whole numbers. */
  public static String object(Map<String, ?> fields) {
    return fields.entrySet().stream().map(field -> string(field.getKey()) + ":" + field.getValue())
        .collect(Collectors.joining(",", "{", "}"));
  }
}
