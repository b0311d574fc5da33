package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.ConeOfInfluence;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Vocabulary;
import rungbook.system.ZoneStar;
import rungbook.system.reader.BaseSystem;

/** The positions of the controls in which a fault may have blown a fuse. */
class ControlPositionsTest {

  private static final int CONTROLS = 24;

  private static ControlSystem zones(int zones) {
    var read = BaseSystem.read("zones",
        DocumentReader.read(new Source("shared/systems/zones.md", new ZoneStar(zones, CONTROLS).system())));
    assertEquals(List.of(), read.problems());
    return read.system();
  }

  private static List<String> controls(ControlSystem system, String fault) {
    CircuitNetwork network = CircuitNetwork.of(system);
    Fault found = system.faults().stream().filter(one -> one.key().equals(fault)).findFirst().orElseThrow();
    return new ConeOfInfluence(network).of(FaultCase.of(found, network)).stream().map(Vocabulary.Control::name)
        .toList();
  }

  /** All combinations are 33 million. */
  @Test
  void aShortInOneZoneDependsOnItsOwnControlAlone() {
    ControlSystem system = zones(CONTROLS);
    assertEquals(1L << CONTROLS + 1, CircuitState.positionCount(system.vocabulary().controls().values()));
    assertEquals(List.of("call 7"), controls(system, "cable 7 shorted"));
    assertEquals(List.of("call 7"), controls(system, "call contact 7 stuck closed"));
    assertEquals(2, Collections.max(ControlPositions.counts(system).values()));
  }

  @Test
  void aZoneOfSeveralControlsDependsOnAllOfThem() {
    assertEquals(List.of("call 2", "call 10", "call 18"), controls(zones(8), "cable 2 shorted"));
  }

  /**
   * By hand: 27 V over 0.7 ohm of transformer and 0.65 ohm of cable are 20 A. The zone's fuse opens at 3 A times 1.35,
   * the breaker at 5 A times 5.
   */
  @Test
  void theZonesFuseIsBlownBeforeTheTechnicianArrives() {
    ControlSystem system = zones(CONTROLS);
    var dictionary = Dictionary.of(system, new Samples(List.of(Draw.MIDDLE)));
    assertEquals(Set.of("fuse 7"), dictionary.opened(dictionary.cases().indexOf("cable 7 shorted"), 0));
    assertEquals(Set.of(), dictionary.opened(dictionary.cases().indexOf("cable 7 open"), 0));
  }

  /** In the three systems, that is what every combination of all controls blows. */
  @ParameterizedTest
  @MethodSource("rungbook.circuit.SystemsTest#systems")
  void theOtherControlsBlowNothingElse(String id) {
    ControlSystem system = Systems.read(id);
    CircuitNetwork network = CircuitNetwork.of(system);
    var dictionary = Dictionary.of(system, Samples.seeded(1, 4));
    CircuitState start = CircuitState.start(system.vocabulary());
    int blown = 0;
    for (int i = 1; i < dictionary.cases().size(); i++) {
      FaultCase fault = FaultCase.of(system.faults().get(i - 1), network);
      List<CircuitState> every = fault.mayBlowFuses() ? start.everyPosition(system.vocabulary()) : List.of();
      for (int sample = 0; sample < dictionary.samples(); sample++) {
        assertEquals(Settle.opened(network, fault, every, Samples.seeded(1, 4).draws().get(sample)),
            dictionary.opened(i, sample), fault.name());
        blown += dictionary.opened(i, sample).size();
      }
    }
    assertTrue(blown > 0);
  }
}
