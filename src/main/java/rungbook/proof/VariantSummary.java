package rungbook.proof;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.proof.plan.Installations;
import rungbook.proof.report.EndShares;
import rungbook.proof.report.Proof;

/** Says of each variant of the system how the tree does in it. */
final class VariantSummary {

  private final Installations installations;
  private final List<String> names;
  private final BitSet claimed;
  private final EndTable ends;

  /** @param names of the cases, as the system writes them */
  VariantSummary(Installations installations, List<String> names, BitSet claimed, EndTable ends) {
    this.installations = installations;
    this.names = names;
    this.claimed = claimed;
    this.ends = ends;
  }

  /** Nothing if the system has no variants. */
  List<Proof.InVariant> all() {
    int count = installations.variants().size();
    return count < 2 ? List.of() : IntStream.range(0, count).mapToObj(this::of).toList();
  }

  private Proof.InVariant of(int variant) {
    int[] has = faults(variant);
    int[] named = IntStream.of(has).filter(claimed::get).toArray();
    double found = 0;
    double mistaken = 0;
    for (int one : has) {
      EndShares shares = ends.of(one, variant);
      found += claimed.get(one) ? installations.likelihood(one) * shares.found() : 0;
      mistaken += installations.likelihood(one) * shares.mistaken();
    }
    Installations.Variant known = installations.variants().get(variant);
    return new Proof.InVariant(known.name(), known.share(), known.drawn(), has.length, named.length,
        over(found, named), over(mistaken, has), ends.of(0, variant).mistaken(), changed(variant, has));
  }

  /** The faults that a variant can have and that give the complaint in it. */
  private int[] faults(int variant) {
    boolean[] has = new boolean[names.size()];
    for (int sample = 0; sample < installations.drawn(); sample++) {
      for (int one = 1; installations.variant(sample) == variant && one < has.length; one++) {
        has[one] |= installations.weight(one, sample) > 0;
      }
    }
    return IntStream.range(1, has.length).filter(one -> has[one]).toArray();
  }

  private double over(double part, int[] faults) {
    double whole = IntStream.of(faults).mapToDouble(installations::likelihood).sum();
    return whole == 0 ? 0 : part / whole;
  }

  private List<Proof.ChangedFault> changed(int variant, int[] has) {
    List<Proof.ChangedFault> changed = new ArrayList<>();
    for (int one : has) {
      EndShares base = ends.of(one, 0);
      EndShares shares = ends.of(one, variant);
      if (shares.differs(base)) {
        changed.add(new Proof.ChangedFault(names.get(one), claimed.get(one), shares, shares.isWorse(base)));
      }
    }
    return changed;
  }
}
