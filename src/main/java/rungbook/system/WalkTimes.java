package rungbook.system;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;

/**
 * How long it takes to walk from one location of a system to another. Places keys by {@link Names#key}.
 *
 * @param start where the work begins; empty if the system does not say
 * @param ways how each other place is reached
 */
public record WalkTimes(String start, Map<String, Way> ways) {

  private static final Pattern WALK = Pattern.compile("walk (\\d+(?:\\.\\d+)?) min");

  /** A system whose places are all one. */
  public static final WalkTimes NONE = new WalkTimes("", Map.of());

  public WalkTimes {
    ways = Map.copyOf(ways);
  }

  /** @param from the place from which the minutes are counted */
  public record Way(String from, double minutes) {}

  public static WalkTimes read(Document document) {
    List<Entry> lines = document.blocks("locations").stream().flatMap(block -> block.entries().stream()).toList();
    String start = lines.stream().filter(line -> item(line, "start").isPresent()).map(line -> Names.key(line.key()))
        .findFirst().orElse("");
    var ways = new HashMap<String, Way>();
    for (Entry line : lines) {
      Optional<Matcher> walk = line.items().stream().map(item -> WALK.matcher(item.text())).filter(Matcher::matches)
          .findFirst();
      String from = item(line, "from ").map(text -> Names.key(text.substring(5))).orElse(start);
      walk.ifPresent(match -> ways.put(Names.key(line.key()), new Way(from, Double.parseDouble(match.group(1)))));
    }
    return new WalkTimes(start, ways);
  }

  private static Optional<String> item(Entry line, String prefix) {
    return line.items().stream().map(Entry.Item::text).filter(text -> text.startsWith(prefix)).findFirst();
  }

  /** Along the ways that the system counts, by the place where they part. */
  public double minutes(String from, String to) {
    if (from.equals(to)) {
      return 0;
    }
    Map<String, Double> back = back(from);
    double walked = 0;
    for (String place : chain(to)) {
      if (back.containsKey(place)) {
        return back.get(place) + walked;
      }
      walked += minutesTo(place);
    }
    return 0; // nothing ties the two together, so nothing is known of the walk
  }

  private Map<String, Double> back(String from) {
    var back = new HashMap<String, Double>();
    double walked = 0;
    for (String place : chain(from)) {
      back.put(place, walked);
      walked += minutesTo(place);
    }
    return back;
  }

  /** A place and those its way is counted from, as far as the start. */
  private List<String> chain(String place) {
    var chain = new ArrayList<String>();
    for (String at = place; at != null && !chain.contains(at); at = ways.containsKey(at) ? ways.get(at).from() : null) {
      chain.add(at);
    }
    return chain;
  }

  private double minutesTo(String place) {
    return ways.containsKey(place) ? ways.get(place).minutes() : 0;
  }
}
