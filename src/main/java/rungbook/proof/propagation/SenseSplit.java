package rungbook.proof.propagation;

import java.util.Arrays;
import java.util.List;
import rungbook.proof.plan.Installations;
import rungbook.system.Names;
import rungbook.tree.Answer;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** Divides what arrives at a check without a meter among its ways, by what the system shows. */
final class SenseSplit {

  private final Step.SenseCheck check;
  private final boolean[] open;
  private final boolean[][] seen;
  private final boolean[] modeled;
  private final List<List<String>> values;
  private final int[][] shown;
  private boolean[] known = {};
  private int knownSample = -1;

  /** @param open the ways that may be taken where the system says nothing */
  SenseSplit(Installations installations, Step.SenseCheck check, boolean[] open) {
    this.open = open;
    this.check = check;
    int things = check.things().size();
    seen = new boolean[things][installations.samples()];
    modeled = new boolean[things];
    shown = new int[things][installations.samples()];
    values = check.things().stream().map(thing -> installations.values(thing.key())).toList();
    for (int i = 0; i < things; i++) {
      modeled[i] = installations.shows(check.things().get(i).key());
    }
  }

  void look(Installations.Observations observations, int caseNumber) {
    knownSample = -1;
    for (int i = 0; i < seen.length; i++) {
      if (modeled[i] && values.get(i).isEmpty()) {
        observations.seen(caseNumber, check.things().get(i).key(), seen[i]);
      } else if (modeled[i]) {
        lookAtValues(observations, caseNumber, i);
      }
    }
  }

  /** Which value is seen first in each installation; none in a variant without the sight. */
  private void lookAtValues(Installations.Observations observations, int caseNumber, int thing) {
    Arrays.fill(shown[thing], -1);
    for (int value = 0; value < values.get(thing).size(); value++) {
      observations.seen(caseNumber, check.things().get(thing).key() + " " + values.get(thing).get(value), seen[thing]);
      for (int sample = 0; sample < seen[thing].length; sample++) {
        if (seen[thing][sample] && shown[thing][sample] < 0) {
          shown[thing][sample] = value;
        }
      }
    }
  }

  /**
   * The ways that may be taken: one where everything is modeled, each with an equal share where not. Where what is
   * seen leaves none of the open ways, any way that fits.
   */
  boolean[] ways(int sample) {
    if (knownSample < 0 || !looksAlike(sample, knownSample)) {
      known = waysAt(sample);
      knownSample = sample;
    }
    return known;
  }

  /** Most installations look as the one before them. */
  private boolean looksAlike(int sample, int other) {
    for (int i = 0; i < seen.length; i++) {
      if (seen[i][sample] != seen[i][other] || shown[i][sample] != shown[i][other]) {
        return false;
      }
    }
    return true;
  }

  private boolean[] waysAt(int sample) {
    boolean[] may = ways(sample, open);
    if (allModeled() || anyOf(may)) {
      return may;
    }
    boolean[] every = new boolean[open.length];
    Arrays.fill(every, true);
    return ways(sample, every);
  }

  private static boolean anyOf(boolean[] ways) {
    for (boolean way : ways) {
      if (way) {
        return true;
      }
    }
    return false;
  }

  private boolean[] ways(int sample, boolean[] open) {
    List<Way> ways = check.ways();
    boolean[] may = new boolean[ways.size()];
    boolean any = false;
    for (int way = 0; way < may.length; way++) {
      boolean asked = allModeled() ? !any : open[way];
      may[way] = asked && ways.get(way).answer() instanceof Answer.Words words && fits(words.words(), sample);
      any |= may[way];
    }
    for (int way = 0; way < may.length; way++) {
      may[way] |= ways.get(way).answer() instanceof Answer.AnythingElse && (allModeled() ? !any : open[way]);
    }
    return may;
  }

  private boolean fits(List<String> words, int sample) {
    for (int i = 0; i < seen.length && i < words.size(); i++) {
      String word = words.get(i);
      if (modeled[i] && !word.equals(Answer.Words.ANY) && !isSeen(i, word, sample)) {
        return false;
      }
    }
    return true;
  }

  private boolean isSeen(int thing, String word, int sample) {
    if (values.get(thing).isEmpty()) {
      return word.equals(seen[thing][sample] ? "yes" : "no");
    }
    int value = shown[thing][sample];
    return value >= 0 && values.get(thing).get(value).equals(Names.key(word));
  }

  boolean allModeled() {
    for (boolean one : modeled) {
      if (!one) {
        return false;
      }
    }
    return modeled.length > 0;
  }

  /** Divides the weights of one case, way by way; what no way takes comes last. */
  void divide(double[] weights, double[][] byWay) {
    for (double[] way : byWay) {
      Arrays.fill(way, 0);
    }
    for (int sample = 0; sample < weights.length; sample++) {
      if (weights[sample] > 0) {
        divide(weights[sample], sample, byWay);
      }
    }
  }

  private void divide(double weight, int sample, double[][] byWay) {
    boolean[] may = ways(sample);
    int count = 0;
    for (boolean way : may) {
      count += way ? 1 : 0;
    }
    for (int way = 0; way < may.length; way++) {
      byWay[way][sample] += may[way] ? weight / count : 0;
    }
    byWay[may.length][sample] += count == 0 ? weight : 0;
  }
}
