package rungbook.proof.cases;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.Dictionary;
import rungbook.circuit.network.Samples;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;

/** A dictionary that is built when something has to be solved. Thread-safe. */
public final class LazyDictionary {

  private final ControlSystem system;
  private final Samples samples;
  private final List<List<Fault>> together;
  private @Nullable Dictionary built;

  public LazyDictionary(ControlSystem system, Samples samples, List<List<Fault>> together) {
    this.system = system;
    this.samples = samples;
    this.together = together;
  }

  public synchronized Dictionary get() {
    if (built == null) {
      built = Dictionary.of(system, samples, together);
    }
    return built;
  }
}
