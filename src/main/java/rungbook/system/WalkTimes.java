package rungbook.system;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Walking times between the locations of a system, which form a tree. Locations are keys.
 *
 * @param start where the work begins; empty if the system does not say
 * @param walks the walk to each other location
 */
public record WalkTimes(String start, Map<String, Walk> walks) {

  public WalkTimes {
    walks = Map.copyOf(walks);
  }

  /**
   * The walk to a location.
   *
   * @param from the location where it starts
   */
  public record Walk(String from, double minutes) {}

  /** Minutes along the tree of walks, through the first location that both chains share; 0 if there is none. */
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
    return 0; // no walk connects the two locations
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

  /** A location and those on its way back to the start. */
  private List<String> chain(String place) {
    var chain = new ArrayList<String>();
    for (String at = place; at != null && !chain.contains(at);
        at = walks.containsKey(at) ? walks.get(at).from() : null) {
      chain.add(at);
    }
    return chain;
  }

  private double minutesTo(String place) {
    return walks.containsKey(place) ? walks.get(place).minutes() : 0;
  }
}
