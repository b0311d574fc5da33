package rungbook.circuit.sequence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.system.Part;

/**
 * Switches that stay open, once they have opened, until somebody resets them. In a {@link RelayState} they are counted
 * after the fuses, which stay open too.
 */
final class ManualResets {

  private final List<String> keys;
  private final int[] ofBranch;
  private final int[] branches;

  /** @param fuses how many fuses and breakers there are */
  ManualResets(CircuitNetwork network, int fuses) {
    keys = network.system().parts(Part.Switch.class).filter(Part.Switch::manualReset).map(Part::key).toList();
    Map<String, Integer> numbers = new HashMap<>();
    keys.forEach(key -> numbers.put(key, fuses + numbers.size()));
    List<Branch> all = network.branches();
    ofBranch = all.stream().mapToInt(branch -> numbers.getOrDefault(branch.part(), -1)).toArray();
    branches = IntStream.range(0, ofBranch.length).filter(branch -> ofBranch[branch] >= 0).toArray();
  }

  List<String> keys() {
    return keys;
  }

  boolean isTripped(int branch, RelayState relays) {
    return ofBranch[branch] >= 0 && relays.blown[ofBranch[branch]];
  }

  /** Notes which of them have opened: all limbs of one trip together. */
  void trip(RelayState relays, int[] switchOfBranch) {
    for (int branch : branches) {
      relays.blown[ofBranch[branch]] |= !relays.closed[switchOfBranch[branch]];
    }
  }
}
