package rungbook.proof.coverage;

import java.util.List;
import java.util.Map;
import rungbook.proof.MadeUp;
import rungbook.proof.report.Proof;
import rungbook.tree.Tree;

/**
 * A library of two trees, worked out by hand: {@code dark} is for a lamp that stays dark and hands the dead lamp on to
 * {@code lit}, which is for one that glows and knows the dead lamp alone. The weak wire glows and is found by neither.
 */
public final class TwoTrees {

  private static final String ON = "## On\n\n```task\nset: lever on\nat: hall\nminutes: 2\n```\n\n- done: "
      + "[Glow](#glow)\n\n";
  private static final String GLOW = "## Glow\n\n```check\nlook: glow\nat: hall\nminutes: 1\n```\n\n- yes: "
      + "[Sound](#sound)\n";
  private static final String SOUND = "\n## Sound\n\n```finding\nhealthy: yes\n```\n";

  private static final MadeUp LAMP = new MadeUp(Map.of());
  private static final Tree DARK = MadeUp.tree("one", "call: lever on\nnot seen: glow\n",
      ON + GLOW + "- no: [other](other.md)\n" + SOUND);
  private static final Tree LIT = MadeUp.tree("other", "call: lever on\nseen: glow\n",
      ON + GLOW + "- no: [Dead](#dead)\n" + SOUND + "\n## Dead\n\n```finding\nfault: lamp dead\n```\n");

  private TwoTrees() {}

  /** The only system has two faults, of likelihood 1 and 2. */
  public static List<SystemCoverage> coverage() {
    return LibraryCoverage.of(proofs().stream().map(TreeFindings::of).toList());
  }

  private static List<Proof> proofs() {
    return List.of(LAMP.prove(DARK, LIT), LAMP.prove(LIT, DARK));
  }
}
