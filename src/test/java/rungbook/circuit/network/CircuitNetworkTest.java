package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.system.BenchSystem;

/** How names find nodes and branches. */
class CircuitNetworkTest {

  private final CircuitNetwork network = CircuitNetwork.of(BenchSystem.read("L1 N A B D E F G P Q", """
      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      fuse: fuse, 3 A, L1 to A
      screw: joint, P to A
      wire: wire, A to B
      contactor: contact, A to D, B to E, closed when call on
      lamp: load, 24 V, 5 W, D to N
      run capacitor: capacitor, E to F, 5 uF
      call: load, 24 V, 5 W, A to N
      ```

      ```assemblies
      unit: wire, lamp
      ```

      ```faults
      strand: short B to Q
      ```
      """).system());

  private int node(String point) {
    return network.node(point, "bench").orElseThrow();
  }

  private List<String> branches(String name) {
    return keys(network.branchesOf(name));
  }

  private List<String> keys(int[] branches) {
    return Arrays.stream(branches).mapToObj(i -> network.branches().get(i).key()).toList();
  }

  private Optional<String> clamped(String point) {
    return network.conductorAt(node(point)).map(i -> network.branches().get(i).key());
  }

  @Test
  void joinedPointsShareANodeAndGroundIsNodeZero() {
    assertEquals(node("A"), node("P"));
    assertEquals(0, node("N"));
    assertEquals(0, node("ground"));
    assertTrue(node("A") != node("B"));
  }

  @Test
  void aPointWithNoWiringHasANodeOnlyIfAFaultReachesIt() {
    assertTrue(node("Q") > 0);
    assertEquals(Optional.empty(), network.node("G", "bench"));
    assertEquals(Optional.empty(), network.node("A", "elsewhere"));
  }

  @Test
  void aNameFindsThePartThenTheLimbThenTheAssembly() {
    assertEquals(List.of("contactor a", "contactor b"), branches("contactor"));
    assertEquals(List.of("contactor b"), branches("contactor b"));
    assertEquals(List.of("wire", "lamp"), branches("unit"));
    assertEquals(List.of(), branches("nothing"));
  }

  @Test
  void onlyWiresComeOffATerminal() {
    assertEquals(List.of("wire"), keys(network.wiresAt(node("A"))));
    assertEquals(List.of("wire"), keys(network.wiresAt(node("B"))));
    assertEquals(List.of(), keys(network.wiresAt(node("D"))));
  }

  /** A clamp goes around a wire if there is one; a supply, a capacitor or a joint has nothing to go around. */
  @Test
  void aClampGoesAroundTheWireElseTheFirstContactFuseOrLoad() {
    assertEquals(Optional.of("wire"), clamped("A"));
    assertEquals(Optional.of("wire"), clamped("B"));
    assertEquals(Optional.of("fuse"), clamped("L1"));
    assertEquals(Optional.of("contactor a"), clamped("D"));
    assertEquals(Optional.empty(), clamped("F"));
    assertEquals(Optional.empty(), clamped("Q"));
  }
}
