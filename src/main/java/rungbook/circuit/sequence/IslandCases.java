package rungbook.circuit.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.FaultedParameters;

/**
 * What the cases of one block do in each island of the network. Cases that do the same there, in the same modes of its
 * branches, have the same voltages there, to the last bit: so most pairs of faults need no network of their own.
 */
public final class IslandCases {

  /** More changes than faults have; those beyond always count. */
  private static final int MOST_MASKED = 6;

  private final CircuitNetwork network;
  private final Islands islands;
  private final IdentityHashMap<FaultedParameters, Object> structures = new IdentityHashMap<>();
  private final IdentityHashMap<FaultedParameters, Doing[]> known = new IdentityHashMap<>();
  private final Map<Done, Integer> numbers = new HashMap<>();

  /** What is done in an island. Numbers of two structures differ in their last bits. */
  private record Done(Object structure, int island, List<NetworkChange> changes, Map<String, ?> supplies,
      Map<String, ?> pickUps) {}

  /** What one case does in one island, and its number by which of the changes count. */
  private record Doing(Done all, int[] numbers) {}

  /** An island in one state of its branches and with what a case does there. */
  public static final class Key {

    private final int island;
    private final int number;
    private final byte[] modes;
    private final int hash;

    Key(int island, int number, byte[] modes) {
      this.island = island;
      this.number = number;
      this.modes = modes;
      hash = 31 * (31 * Arrays.hashCode(modes) + number) + island;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key && hash == key.hash && island == key.island && number == key.number
          && Arrays.equals(modes, key.modes);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  public IslandCases(CircuitNetwork network) {
    this.network = network;
    islands = new Islands(network);
  }

  public Islands islands() {
    return islands;
  }

  /** Says in which structure a case is solved. A case of which nothing is said has one of its own. */
  public void add(FaultedParameters faulted, Object structure) {
    structures.put(faulted, structure);
  }

  /** Whether each of a case's changes is in one island. */
  boolean isDivided(FaultedParameters faulted) {
    return doing(faulted).length > 1;
  }

  /** @param island its number; {@link Islands#WHOLE} for the whole network */
  public Key key(int island, byte[] modes, FaultedParameters faulted) {
    Doing[] doing = doing(faulted);
    if (island == Islands.WHOLE || doing.length == 1) {
      return new Key(Islands.WHOLE, number(doing[doing.length - 1], modes), modes);
    }
    int[] branches = islands.branches(island);
    byte[] own = new byte[branches.length];
    for (int i = 0; i < own.length; i++) {
      own[i] = modes[branches[i]];
    }
    return new Key(island, number(doing[island], modes), own);
  }

  /** What a case does in each island and, last, in the whole network; only the latter if a change is in two islands. */
  private Doing[] doing(FaultedParameters faulted) {
    return known.computeIfAbsent(faulted, one -> {
      FaultCase fault = one.fault();
      boolean isDivided = fault.changes().stream()
          .noneMatch(change -> islands.ofChange(change, network.cores()) == Islands.WHOLE);
      var all = new ArrayList<Doing>();
      for (int island = 0; isDivided && island < islands.count(); island++) {
        all.add(doing(one, island));
      }
      all.add(doing(one, Islands.WHOLE));
      return all.toArray(Doing[]::new);
    });
  }

  private Doing doing(FaultedParameters faulted, int island) {
    FaultCase fault = faulted.fault();
    List<NetworkChange> changes = fault.changes().stream()
        .filter(change -> island == Islands.WHOLE || islands.ofChange(change, network.cores()) == island).toList();
    return new Doing(new Done(structures.getOrDefault(faulted, faulted), island, changes,
        of(island, fault.supplies()), of(island, fault.pickUps())),
        new int[1 << Math.min(MOST_MASKED, changes.size())]);
  }

  private <T> Map<String, T> of(int island, Map<String, T> byPart) {
    Map<String, T> own = new HashMap<>(byPart);
    own.keySet().removeIf(part -> island != Islands.WHOLE && ofPart(part) != island);
    return own;
  }

  private int ofPart(String part) {
    List<Branch> branches = network.branches();
    return IntStream.range(0, branches.size()).filter(i -> branches.get(i).part().equals(part))
        .map(islands::ofBranch).findFirst().orElse(0);
  }

  private int number(Doing doing, byte[] modes) {
    List<NetworkChange> changes = doing.all().changes();
    int mask = 0;
    for (int i = 0; i < Math.min(MOST_MASKED, changes.size()); i++) {
      mask |= counts(changes.get(i), modes) ? 1 << i : 0;
    }
    int number = doing.numbers()[mask];
    if (number == 0) {
      int counted = mask;
      Done all = doing.all();
      List<NetworkChange> left = IntStream.range(0, changes.size())
          .filter(i -> i >= MOST_MASKED || (counted >> i & 1) == 1).mapToObj(changes::get).toList();
      number = numbers.computeIfAbsent(new Done(all.structure(), all.island(), left, all.supplies(), all.pickUps()),
          key -> numbers.size() + 1);
      doing.numbers()[mask] = number;
    }
    return number;
  }

  /** A change of a branch that does not conduct changes nothing, nor does an overload of a load that is not on. */
  private static boolean counts(NetworkChange change, byte[] modes) {
    if (change instanceof NetworkChange.Open open) {
      return BranchMode.conduction(modes[open.branch()]) != BranchMode.ABSENT;
    }
    if (change instanceof NetworkChange.Raise raise) {
      return BranchMode.conduction(modes[raise.branch()]) != BranchMode.ABSENT;
    }
    return !(change instanceof NetworkChange.Overload overload)
        || BranchMode.conduction(modes[overload.branch()]) == BranchMode.ON;
  }
}
