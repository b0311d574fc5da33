package rungbook.system.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What takes a fault away. All names are lookup keys.
 *
 * @param sites for each effect of the fault, where it can be repaired: the limb or conductor, its part, and the
 * assemblies that have the part; none if the system says nothing about its parts
 * @param foundOff the power switch that is only found off, which switching on puts right; empty for any other fault
 */
public record Remedy(List<Set<String>> sites, Optional<String> foundOff) {

  public Remedy {
    sites = List.copyOf(sites);
  }

  /** Whether some effect of the fault is in this limb, part or assembly. */
  public boolean isAt(String key) {
    return sites.stream().anyMatch(site -> site.contains(key));
  }

  /** Whether the fault is gone once these are repaired or replaced, and these switched on. */
  public boolean isDoneBy(Set<String> repaired, Set<String> switchedOn) {
    boolean everywhere = !sites.isEmpty()
        && sites.stream().allMatch(site -> site.stream().anyMatch(repaired::contains));
    return everywhere || foundOff.filter(switchedOn::contains).isPresent();
  }
}
