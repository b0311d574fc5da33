package rungbook.web.views;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.map.Diagram;
import rungbook.map.Drawing;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.advice.Advice;
import rungbook.proof.advice.AdviceText;
import rungbook.proof.advice.TreeState;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.IntermittentFaults;
import rungbook.proof.report.OnwardShares;
import rungbook.proof.report.Proof;
import rungbook.report.ProofVariants;
import rungbook.report.words.IntermittentText;
import rungbook.report.words.PairWords;
import rungbook.text.English;
import rungbook.text.UrlPath;

/** Puts a proof into words, bars and pictures. */
public final class ProofViews {
  private static final double TOO_FEW_TO_LIST = 1e-3;
  private final Proof proof;
  private final String treeHref;
  private final double allLikelihood;

  private ProofViews(Proof proof, String treeHref) {
    this.proof = proof;
    this.treeHref = treeHref;
    allLikelihood = proof.outcomes().stream().mapToDouble(Proof.Outcome::likelihood).sum();
  }

  /**
   * @param path the tree's file
   * @param treeHref where the tree's own page is
   */
  public static ProofView of(Proof proof, Advice advice, TreeState state, String path, String treeHref) {
    var views = new ProofViews(proof, treeHref);
    var faults = proof.outcomes().stream().skip(1).toList();
    return new ProofView(StateView.of(state),
        advice.first().stream().map(one -> ToDoView.of(one, path)).toList(), AdviceText.behind(advice).orElse(""),
        views.walked(), views.facts(), MeasureViews.of(proof), proof.unmodeled(),
        faults.stream().filter(Proof.Outcome::claimed).sorted(Comparator.comparingDouble(Proof.Outcome::found))
            .map(views::fault).toList(),
        faults.stream().filter(outcome -> !outcome.claimed()).map(views::fault).toList(),
        proof.endings().stream().map(views::ending).toList(), views.variants(),
        proof.checks().stream().filter(check -> !check.limits().isEmpty()).map(views::check).toList(), views.map());
  }

  private String walked() {
    return "Followed on " + proof.tree().system().orElseThrow().title() + " with "
        + English.counted(proof.outcomes().size() - 1, "fault") + " and without any, in "
        + proof.drawn() + " installations drawn at random and in " + proof.corners() + " corners of the tolerances";
  }

  private List<ProofView.Fact> complaint() {
    var complaint = proof.complaint();
    if (complaint.symptoms().isEmpty()) {
      return List.of(new ProofView.Fact("Complaint",
          "not said in the system's words, so every fault of the system counts"));
    }
    return List.of(new ProofView.Fact("Complaint", Complaint.words(complaint.symptoms().get())),
        new ProofView.Fact("Given by", PairWords.given(proof) + ", " + percent(complaint.likelihood())
            + " of the system's likelihood; the percentages on this page are odds among them"),
        new ProofView.Fact("Not covered", complaint.uncovered().isEmpty()
            ? "nothing: a finding here or in a tree that takes over names every fault"
            : complaint.uncovered().stream().map(one -> one.fault() + " " + percent(one.likelihood()))
                .collect(Collectors.joining(", "))));
  }

  private List<ProofView.Fact> facts() {
    var facts = new ArrayList<ProofView.Fact>(complaint());
    if (proof.claimed().faults() > 0) {
      var always = proof.outcomes().stream().filter(outcome -> outcome.claimed() && Share.isAll(outcome.found()))
          .filter(outcome -> !proof.isPair(outcome.name())).count();
      facts.add(new ProofView.Fact("Always found", always + " of "
          + English.counted(proof.claimed().faults(), "fault") + " it names"));
      facts.add(new ProofView.Fact("Work",
          String.format(Locale.ROOT, "%.1f checks and %.0f minutes on average, walking included",
              proof.meanChecks(), proof.meanMinutes())));
    }
    facts.add(new ProofView.Fact("Good units", falseAlarms()));
    proof.repairs().forEach(repair -> facts.add(new ProofView.Fact("Repair after " + repair.title(),
        percent(repair.passed()) + " proved; " + percent(repair.noticed()) + " of wrong repairs noticed")));
    if (!proof.intermittent().faults().isEmpty()) {
      facts.add(new ProofView.Fact("Faults that come and go", IntermittentText.of(proof.intermittent().all())));
      proof.intermittent().wrongParts()
          .forEach(wrong -> facts.add(new ProofView.Fact("A wrong part", IntermittentText.of(wrong))));
    }
    proof.pairs().forEach(pair -> facts.add(new ProofView.Fact(pair.name(), PairWords.of(pair))));
    return facts;
  }

  private String falseAlarms() {
    if (proof.falseAlarmShare() > 0) {
      return percent(proof.falseAlarmShare()) + " of good units get a fault";
    }
    return proof.falseAlarms().isEmpty() ? "no good unit gets a fault"
        : "good units get a fault only at the ends of all tolerances";
  }

  private List<ProofView.Variant> variants() {
    var proved = proof.variants().stream()
        .map(one -> new ProofView.Variant(ProofVariants.name(one), percent(one.share()), ProofVariants.words(one)));
    var left = proof.variants().isEmpty() ? Stream.<ProofView.Variant>empty()
        : proof.tree().notFor().stream().map(one -> new ProofView.Variant(one.name(), "", ProofVariants.NOT_PROVED));
    return Stream.concat(proved, left).toList();
  }

  private ProofView.Fault fault(Proof.Outcome outcome) {
    var label = Share.isAll(outcome.found()) ? "found"
        : outcome.found() > 0 ? "partly found" : outcome.claimed() ? "missed" : "not named";
    var mark = Share.isAll(outcome.found()) ? "✓" : outcome.found() > 0 ? "½" : outcome.claimed() ? "✕" : "–";
    return new ProofView.Fault(outcome.name(), percent(outcome.likelihood() / allLikelihood), label, mark,
        bar(outcome.found()), ends(outcome.name()));
  }

  private List<ProofView.Place> ends(String fault) {
    return proof.endings().stream().flatMap(ending -> ending.arrived().stream()
        .filter(arrived -> arrived.fault().equals(fault) && arrived.share() >= TOO_FEW_TO_LIST)
        .map(arrived -> new ProofView.Place(title(ending), href(ending.end()), percent(arrived.share()),
            arrived.named())))
        .toList();
  }

  // a number and its sign stay on one line
  private static String percent(double share) {
    return ReportNumbers.percent(share).replace(" %", "\u00a0%");
  }

  private static ProofView.Bar bar(double share) {
    return new ProofView.Bar(percent(share), (int) Math.round(100 * share));
  }

  private ProofView.Ending ending(Proof.Ending ending) {
    var kind = kind(ending.end());
    var letter = letter(ending.end());
    var group = ending.group() > 1 ? "leaves " + ending.group() + " faults open"
        : ending.group() == 1 ? "leaves one fault" : "";
    return new ProofView.Ending(kind, letter, ending.title(), href(ending.end()), bar(ending.likelihood()),
        ending.end() instanceof End.HandedOn on ? onward(on) : ending.named().isEmpty() ? "" : group, excluded(ending),
        arrived(ending));
  }

  private String excluded(Proof.Ending ending) {
    return ending.end() instanceof End.Finding finding ? IntermittentText.mark(proof, finding.step()) : "";
  }

  private String onward(End.HandedOn on) {
    var words = OnwardShares.words(proof, on.tree());
    return words.isEmpty() ? "" : "in the end " + words.replace(" %", "\u00a0%");
  }

  private static String kind(End end) {
    if (end instanceof End.Finding) {
      return "Finding";
    }
    return end instanceof End.HandedOn ? "Other tree" : end instanceof End.Ended ? "End" : "No answer fits";
  }

  private static String letter(End end) {
    if (end instanceof End.Finding) {
      return "F";
    }
    return end instanceof End.HandedOn ? "→" : end instanceof End.Ended ? "E" : "?";
  }

  private static List<ProofView.Arrived> arrived(Proof.Ending ending) {
    return ending.arrived().stream().filter(one -> one.named() || one.share() >= TOO_FEW_TO_LIST)
        .map(one -> new ProofView.Arrived(one.fault(), bar(one.share()), one.named())).toList();
  }

  private static String title(Proof.Ending ending) {
    return ending.end() instanceof End.Stuck ? "no answer at " + ending.title() : ending.title();
  }

  private String href(End end) {
    if (end instanceof End.HandedOn on) {
      return "/tree/trees/" + UrlPath.of(on.tree()) + ".md";
    }
    return step(((End.AtStep) end).step());
  }

  private String step(int step) {
    return treeHref + "#" + proof.tree().steps().get(step).id();
  }

  private ProofView.Check check(Proof.Check check) {
    return new ProofView.Check(check.title(), step(check.step()), ReadingPicture.svg(check, proof.tree()),
        new PictureWords(check, proof.tree()).sentences());
  }

  @SuppressWarnings("ReferenceEquality") // two ways of a step can have the same value
  private String map() {
    var steps = proof.tree().steps();
    Diagram.Shares shares = (step, way) -> proof.ways().stream()
        .filter(flow -> steps.get(flow.step()) == step && step.ways().get(flow.way()) == way)
        .mapToDouble(Proof.WayFlow::likelihood).findFirst();
    var excluded = proof.intermittent().excluded().stream()
        .collect(Collectors.toMap(IntermittentFaults.Excluded::finding, one -> "by exclusion"));
    return Drawing.of(Diagram.of(proof.tree(), shares).noting(excluded), treeHref);
  }
}
