package rungbook.report;

import java.util.ArrayList;
import java.util.List;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Journey;
import rungbook.report.words.IntermittentText;
import rungbook.text.English;
import rungbook.tree.Tree;

/** What a tree does with every two faults at once, as text for a terminal. */
public final class EveryPairText {

  private final Tree tree;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private EveryPairText(Tree tree, Style style) {
    this.tree = tree;
    this.style = style;
  }

  /** @param tree in which the paths begin */
  public static String of(EveryPair pairs, Tree tree, Style style) {
    var text = new EveryPairText(tree, style);
    text.head(pairs);
    text.wrapped("  ", ends(pairs));
    text.wrapped("  ", "after the first repair: " + repairs(pairs));
    if (!pairs.masks().isEmpty()) {
      text.out.append(style.strong("  a fault that hides another")).append('\n');
      pairs.masks().forEach(text::mask);
    }
    return text.out.append('\n').toString();
  }

  private void head(EveryPair pairs) {
    String tried = pairs.tried() < pairs.all() ? "the likeliest " + pairs.tried() + " of " : "all ";
    out.append(style.strong("  every two faults at once")).append('\n');
    wrapped("  ", tried + English.counted(pairs.all(), "pair") + " of the base of the system, on " + pairs.drawn()
        + " installations; " + pairs.giving() + " give the complaint");
  }

  private static String ends(EveryPair pairs) {
    List<String> words = new ArrayList<>();
    for (Journey.Fate fate : Journey.Fate.values()) {
      String what = fate == Journey.Fate.FOUND ? "one of the two found" : fate == Journey.Fate.MISTAKEN
          ? "a wrong part" : fate == Journey.Fate.HEALTHY ? "called healthy" : fate.words();
      add(what, pairs.share(fate), words);
    }
    return String.join(", ", words);
  }

  private static String repairs(EveryPair pairs) {
    List<String> words = new ArrayList<>();
    add("both gone and proved", pairs.both(), words);
    add("the second noticed", pairs.noticed(), words);
    add("not noticed although it gives this complaint", pairs.missed(), words);
    add("not noticed, and it does not give this complaint", pairs.harmless(), words);
    return words.isEmpty() ? "nothing is repaired in this tree" : String.join(", ", words);
  }

  private void mask(EveryPair.Mask mask) {
    String how = mask.fate() == Journey.Fate.HEALTHY ? "called healthy at" : "ends at";
    wrapped("  ", mask.by() + (mask.isMutual() ? " and " : " hides ") + mask.masked()
        + (mask.isMutual() ? " hide each other" : "") + ": " + how + " `" + mask.title() + "` in "
        + ReportNumbers.percent(mask.share()) + "; " + ReportNumbers.percent(mask.likelihood()) + " of all pairs");
    mask.path().ifPresent(path -> wrapped("    ", IntermittentText.checks(tree, path)));
  }

  private static void add(String what, double share, List<String> words) {
    if (share > Share.ROUNDING) {
      words.add(what + " " + ReportNumbers.percent(share));
    }
  }

  private void wrapped(String label, String words) {
    out.append(label).append(Wrap.text(Columns.printable(words), label.length(), label.length())).append('\n');
  }
}
