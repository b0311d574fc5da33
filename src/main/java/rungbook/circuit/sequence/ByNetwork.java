package rungbook.circuit.sequence;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import rungbook.circuit.solver.FaultedParameters;

/**
 * Something for each network of one block of samples. A network is the modes of its branches and a case; many states of
 * the equipment lead to the same one.
 */
public final class ByNetwork<T> {

  private final Map<Modes, Map<FaultedParameters, T>> all = new HashMap<>();

  /** The modes of all branches by value. A byte buffer would be too, but its hash is several times slower. */
  private static final class Modes {

    private final byte[] ofBranches;
    private final int hash;

    Modes(byte[] ofBranches) {
      this.ofBranches = ofBranches;
      hash = Arrays.hashCode(ofBranches);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Modes modes && Arrays.equals(ofBranches, modes.ofBranches);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  /**
   * What there is of a network.
   *
   * @param modes must not change afterward
   * @param first makes it when it is first asked for
   */
  public T of(byte[] modes, FaultedParameters faulted, Supplier<T> first) {
    return all.computeIfAbsent(new Modes(modes), key -> new HashMap<>()).computeIfAbsent(faulted, key -> first.get());
  }

  public void clear() {
    all.clear();
  }
}
