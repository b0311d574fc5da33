package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungbook.library.pairs.PairProver;
import rungbook.proof.pairs.PairBounds;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Journey.Fate;
import rungbook.proof.report.Proof;

/**
 * Every two faults beside a plain simulation: one house after the other, with its supply, its loose wire and the error
 * of each reading drawn by another generator, Ohm's law by hand, and the tree as three {@code if}s. Nothing is shared
 * with the proof but the texts.
 */
class PairSimulationTest {

  private static final int HOUSES = 40_000;
  private static final int DRAWN = 4_000;

  /**
   * Five standard deviations on the houses that the proof draws: in one of eight the supply is under 20 V, which
   * matters to half of the likelihood.
   */
  private static final double WITHIN = 5 * Math.sqrt(1 / 8.0 * 7 / 8 / DRAWN) / 2;

  /** 24 V and 5 W. */
  private static final double LAMP_OHM = 24 * 24 / 5.0;

  private static final Map<String, Double> LIKELIHOODS = Map.of("wire one open", 2.0, "wire two open", 1.0,
      "lamp open", 4.0, "bell open", 1.0, "wire one loose", 1.0);

  private final Random random = new Random(20);

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** The default meter: within 1 % of reading + 3 digits of 0.1 V, anywhere with equal probability. */
  private boolean shows20(double volts) {
    double most = volts / 100 + 0.3;
    return volts + between(-most, most) >= 20;
  }

  private Fate walk(List<String> faults) {
    double supply = between(19, 27);
    double loose = between(150, 300);
    double fromAtoC = faults.contains("wire one open") ? 0 : supply;
    boolean isLampInCircuit = !faults.contains("wire two open") && !faults.contains("lamp open");
    if (faults.contains("wire one loose") && isLampInCircuit) {
      fromAtoC *= LAMP_OHM / (LAMP_OHM + loose);
    }
    if (!shows20(fromAtoC)) {
      return named(faults, "wire one open");
    }
    double fromBtoC = faults.contains("wire two open") ? 0 : fromAtoC;
    return named(faults, shows20(fromBtoC) ? "lamp open" : "wire two open");
  }

  private static Fate named(List<String> faults, String finding) {
    return faults.contains(finding) ? Fate.FOUND : Fate.MISTAKEN;
  }

  private Map<Fate, Double> simulated() {
    List<String> names = LIKELIHOODS.keySet().stream().sorted().toList();
    Map<Fate, Double> shares = new EnumMap<>(Fate.class);
    double whole = 0;
    for (int one = 0; one < names.size(); one++) {
      for (int other = one + 1; other < names.size(); other++) {
        List<String> faults = List.of(names.get(one), names.get(other));
        double weight = LIKELIHOODS.get(faults.get(0)) * LIKELIHOODS.get(faults.get(1));
        whole += weight;
        for (int house = 0; house < HOUSES; house++) {
          shares.merge(walk(faults), weight / HOUSES, Double::sum);
        }
      }
    }
    double all = whole;
    shares.replaceAll((fate, share) -> share / all);
    return shares;
  }

  @Test
  void sharesOfPairsAreThoseOfAPlainSimulation() {
    Library library = BenchProofs.spread();
    Proof proof = BenchProofs.proof(library);
    EveryPair pairs = PairProver.prove(List.of(proof), library.text(),
        id -> library.tree(id).map(CompiledTree::tree), new PairBounds(100, DRAWN)).values().iterator().next();
    Map<Fate, Double> simulated = simulated();
    assertEquals(10, pairs.giving(), "in every pair, the lamp is dark");
    assertEquals(simulated.get(Fate.FOUND), pairs.share(Fate.FOUND), WITHIN);
    assertEquals(simulated.get(Fate.MISTAKEN), pairs.share(Fate.MISTAKEN), WITHIN);
    assertTrue(pairs.share(Fate.MISTAKEN) > 1 / 29.0 + WITHIN, "more than the loose wire with the open bell");
  }
}
