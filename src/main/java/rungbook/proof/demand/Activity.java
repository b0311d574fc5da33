package rungbook.proof.demand;

import java.util.Map;

/**
 * What a system does in one state. Each map has the share of the installations, from 0 to 1, by a part's or a sight's
 * key; what is in none of them is left out.
 *
 * @param on loads that are pulled in, run or have their voltage
 * @param humming loads that have voltage but are not on
 * @param seen what can be seen, heard or felt
 */
public record Activity(Map<String, Double> on, Map<String, Double> humming, Map<String, Double> seen) {

  public Activity {
    on = Map.copyOf(on);
    humming = Map.copyOf(humming);
    seen = Map.copyOf(seen);
  }
}
