package rungbook.web.http;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The media types that a request's {@code Accept} header asks for, most wanted first (RFC 9110, 12.5.1). Any header can
 * be read: it is needed to answer a request that is wrong already.
 */
record Accepts(List<String> types) {
  private record Weighted(String type, double weight) {}

  /** @param header null when the request has none */
  static Accepts of(@Nullable String header) {
    var weighted = new ArrayList<Weighted>();
    for (var range : (header == null ? "" : header).split(",", -1)) {
      var parts = range.split(";", -1);
      weighted.add(new Weighted(parts[0].strip().toLowerCase(Locale.ROOT), weight(parts)));
    }
    weighted.sort(Comparator.comparingDouble(Weighted::weight).reversed());
    return new Accepts(weighted.stream().filter(range -> range.weight() > 0).map(Weighted::type).toList());
  }

  /** Whether a page is preferred to JSON by name; a program that accepts anything gets JSON. */
  boolean prefersPage() {
    for (var type : types) {
      if (type.equals("text/html") || type.equals("application/xhtml+xml")) {
        return true;
      }
      if (type.equals("application/json") || type.endsWith("+json")) {
        return false;
      }
    }
    return false;
  }

  private static double weight(String[] parts) {
    for (var i = 1; i < parts.length; i++) {
      var parameter = parts[i].strip().toLowerCase(Locale.ROOT);
      if (parameter.matches("q=(0(\\.\\d{0,3})?|1(\\.0{0,3})?)")) {
        return Double.parseDouble(parameter.substring(2));
      }
    }
    return 1;
  }
}
