package rungbook.circuit.sequence;

import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import rungbook.circuit.solver.FaultedParameters;

/**
 * Something for each network of one block of samples. A network is the modes of its branches and a case; many states of
 * the equipment lead to the same one.
 */
public final class ByNetwork<T> {

  private final Map<ByteBuffer, Map<FaultedParameters, T>> all = new HashMap<>();

  /**
   * What there is of a network.
   *
   * @param modes must not change afterward
   * @param first makes it when it is first asked for
   */
  public T of(byte[] modes, FaultedParameters faulted, Supplier<T> first) {
    return all.computeIfAbsent(ByteBuffer.wrap(modes), key -> new HashMap<>()).computeIfAbsent(faulted,
        key -> first.get());
  }

  public void clear() {
    all.clear();
  }
}
