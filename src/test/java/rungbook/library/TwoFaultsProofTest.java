package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.library.pairs.PairProver;
import rungbook.proof.pairs.PairBounds;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Journey;
import rungbook.proof.report.PairOutcome;
import rungbook.proof.report.Proof;

/** Two faults at once, on a bench where every share is worked out by hand. */
class TwoFaultsProofTest {

  private static final double ROUNDING = 1e-12;

  private static double likelihood(Proof proof, String name) {
    return proof.outcomes().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow().likelihood();
  }

  @Test
  void aPairTakesItsLikelihoodFromTheFaultThatBringsIt() {
    Proof proof = BenchProofs.proof(BenchProofs.library(false, ", with bell open at 25 %", ""));
    assertEquals(3, likelihood(proof, "lamp open"), ROUNDING);
    assertEquals(1, likelihood(proof, "lamp open and bell open"), ROUNDING);
    PairOutcome pair = proof.pairs().get(0);
    assertEquals(List.of("lamp open", "bell open"), pair.faults());
    assertEquals(1, pair.ends().found(), ROUNDING, "a finding that names one of them");
  }

  @Test
  void twoLinesThatStateOnePairAddUp() {
    Proof proof = BenchProofs
        .proof(BenchProofs.library(false, ", with bell open at 25 %", ", with lamp open at 50 %"));
    assertEquals(1.5, likelihood(proof, "lamp open and bell open"), ROUNDING);
    assertEquals(3, likelihood(proof, "lamp open"), ROUNDING);
    assertEquals(1, proof.pairs().size());
  }

  @Test
  void aPairMakesNoGroupLargerAndIsNotCountedAsAFault() {
    Proof alone = BenchProofs.proof(BenchProofs.library(false, "", ""));
    Proof pairs = BenchProofs.proof(BenchProofs.library(false, ", with bell open at 25 %", ""));
    assertEquals(alone.claimed().faults(), pairs.claimed().faults());
    assertEquals(alone.endings().stream().map(Proof.Ending::group).toList(),
        pairs.endings().stream().map(Proof.Ending::group).toList());
  }

  private static EveryPair everyPair(int most) {
    Library library = BenchProofs.library(false, "", "");
    Proof proof = BenchProofs.proof(library);
    return PairProver.prove(List.of(proof), library.text(), id -> library.tree(id).map(CompiledTree::tree),
        new PairBounds(most, 8)).values().iterator().next();
  }

  /** Products of the likelihoods 2, 1, 4, 1, 1 of every two: 29 in all, of which 6 end at wire one for low supply. */
  @Test
  void everyPairEndsWhereBothTogetherRead() {
    EveryPair pairs = everyPair(100);
    assertEquals(10, pairs.all());
    assertEquals(10, pairs.giving());
    assertEquals(23.0 / 29, pairs.share(Journey.Fate.FOUND), ROUNDING);
    assertEquals(6.0 / 29, pairs.share(Journey.Fate.MISTAKEN), ROUNDING);
  }

  @Test
  void lowSupplyHidesWhatIsBehindTheFirstReading() {
    List<EveryPair.Mask> masks = everyPair(100).masks();
    assertEquals(List.of("lamp open by supply low", "wire two open by supply low"),
        masks.stream().map(mask -> mask.masked() + " by " + mask.by()).toList());
    assertEquals(4.0 / 29, masks.get(0).likelihood(), ROUNDING);
    assertEquals("Wire one", masks.get(0).title());
    assertEquals(List.of("Look", "A to C", "Wire one"),
        masks.get(0).path().orElseThrow().stops().stream().map(stop -> stop.step()).toList());
  }

  @Test
  void theLikeliestPairsComeFirst() {
    EveryPair pairs = everyPair(1);
    assertEquals(1, pairs.tried());
    assertEquals(10, pairs.all());
    assertTrue(pairs.masks().isEmpty());
    assertEquals(1, pairs.share(Journey.Fate.FOUND), ROUNDING);
  }
}
