package rungbook.proof.demand;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a system does in one state. Each map has the share of the installations, from 0 to 1, by a part's or a sight's
 * key; what is in none of them is left out.
 *
 * @param on loads that are pulled in, run or have their voltage
 * @param humming loads that have voltage but are not on
 * @param seen what can be seen, heard or felt
 */
public record Activity(Map<String, Double> on, Map<String, Double> humming, Map<String, Double> seen) {

  private static final double MOST = 0.5;

  public Activity {
    on = Map.copyOf(on);
    humming = Map.copyOf(humming);
    seen = Map.copyOf(seen);
  }

  /** The keys of the loads that a current passes in most installations: on, or with voltage and not on. */
  public Set<String> withCurrent() {
    return Stream.concat(on.keySet().stream(), humming.keySet().stream())
        .filter(load -> on.getOrDefault(load, 0.0) + humming.getOrDefault(load, 0.0) > MOST)
        .collect(Collectors.toSet());
  }
}
