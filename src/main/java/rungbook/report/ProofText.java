package rungbook.report;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.accounting.TestabilityMeasures;
import rungbook.proof.advice.Advice;
import rungbook.proof.advice.AdviceText;
import rungbook.proof.comparison.Against;
import rungbook.proof.comparison.ComparisonWords;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Bounds;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.IntermittentFaults;
import rungbook.proof.report.OnwardShares;
import rungbook.proof.report.PairOutcome;
import rungbook.proof.report.Proof;
import rungbook.report.words.IntermittentText;
import rungbook.report.words.PairWords;
import rungbook.source.Place;
import rungbook.text.Decimals;
import rungbook.text.English;
import rungbook.tree.Step;

/** A proof as text: what to do, what the tree finds, which faults end where, and the possible range of its limits. */
public final class ProofText {

  private static final int NAME = 38;
  private static final int NUMBER = 11;
  private static final int MOST_NAMED = 4;
  private static final int TO_DO = 4;

  private final Proof proof;
  private final Advice advice;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private ProofText(Proof proof, Advice advice, Style style) {
    this.proof = proof;
    this.advice = advice;
    this.style = style;
  }

  /**
   * @param against an earlier text; empty without one
   * @param file for display
   */
  public static String of(Proof proof, Advice advice, Optional<Against> against, String file, Style style) {
    ProofText text = new ProofText(proof, advice, style);
    text.head(file);
    text.toDo();
    against.ifPresent(text::against);
    text.complaint();
    text.measures();
    text.variants();
    text.endings();
    text.repairs();
    text.pairs();
    text.intermittent();
    text.limits();
    return text.out.append('\n').toString();
  }

  private void head(String file) {
    line(style.strong(Columns.printable(proof.tree().title())) + style.faint("  " + Columns.printable(file)));
    String system = proof.tree().system().map(words -> words.id()).orElse("");
    line("  proved on " + system + ": " + English.counted(proof.outcomes().size() - 1 - proof.pairs().size(), "fault")
        + PairWords.andPairs(proof)
        + " and the healthy system, on "
        + proof.drawn()
        + " installations drawn at random and " + proof.corners() + " corners of the tolerances");
    if (!proof.unmodeled().isEmpty()) {
      wrapped("  not in the circuit: ", String.join(", ", proof.unmodeled()));
    }
    out.append('\n');
  }

  private void toDo() {
    if (advice.first().isEmpty()) {
      line("  nothing to do");
    }
    for (int i = 0; i < advice.first().size(); i++) {
      AdviceText text = AdviceText.of(advice.first().get(i));
      line(style.strong("  to do " + (i + 1) + Wrap.text(": " + Columns.printable(text.what()), TO_DO, TO_DO)));
      wrapped(" ".repeat(TO_DO), text.why());
    }
    AdviceText.behind(advice).ifPresent(more -> wrapped(" ".repeat(TO_DO), more));
    out.append('\n');
  }

  private void against(Against against) {
    String name = Columns.printable(against.name());
    if (against.found().isEmpty()) {
      wrapped("  ", "not compared with " + name + ": " + against.why());
    } else {
      wrapped("  ", "compared with " + name + ": " + ComparisonWords.summary(against.found().get()));
      ComparisonWords.figures(against.found().get()).forEach(figure -> wrapped("    ", figure));
      against.found().get().changes().forEach(change -> wrapped(change.isWorse() ? "  ! " : "    ",
          ComparisonWords.of(change)));
    }
    out.append('\n');
  }

  private void complaint() {
    Complaint complaint = proof.complaint();
    fact("complaint", complaint.symptoms().map(Complaint::words)
        .orElse("not said in the system's words, so every fault of the system counts"));
    if (complaint.symptoms().isPresent()) {
      fact("given by", PairWords.given(proof)
          + ", " + ReportNumbers.percent(complaint.likelihood())
          + " of the system's likelihood; the percentages below are odds among them");
      fact("not covered", uncovered(complaint));
    }
  }

  private static String uncovered(Complaint complaint) {
    return complaint.uncovered().isEmpty() ? "nothing: a finding here or in a tree that takes over names every fault"
        : complaint.uncovered().stream().map(one -> one.fault() + " " + ReportNumbers.percent(one.likelihood()))
            .collect(Collectors.joining(", "));
  }

  private void measures() {
    TestabilityMeasures claimed = proof.claimed();
    boolean stated = proof.complaint().symptoms().isPresent();
    double share = proof.whole().likelihood() == 0 ? 0 : claimed.likelihood() / proof.whole().likelihood();
    fact("names", English.counted(claimed.faults(), "fault") + ", " + ReportNumbers.percent(share)
        + (stated ? " of what gives the complaint" : " of the system's likelihood"));
    if (claimed.faults() > 0) {
      fact("detected", ReportNumbers.percent(claimed.detected()) + " of that; "
          + ReportNumbers.percent(proof.whole().detected())
          + (stated ? " of what gives the complaint" : " of the whole system"));
      fact("isolated",
          ReportNumbers.percent(claimed.isolatedTo(1)) + " to one fault, "
              + ReportNumbers.percent(claimed.isolatedTo(2)) + " to two or fewer, "
              + ReportNumbers.percent(claimed.isolatedTo(3)) + " to three or fewer");
      fact("work", Decimals.rounded(proof.meanChecks(), 1) + " checks and "
          + Decimals.rounded(proof.meanMinutes(), 0) + " minutes on average, walking included");
    }
    fact("false alarms", proof.falseAlarmShare() == 0 ? "no healthy system gets a fault"
        : ReportNumbers.percent(proof.falseAlarmShare()) + " of healthy systems get a fault");
    out.append('\n');
  }

  private void variants() {
    if (proof.variants().isEmpty()) {
      return;
    }
    row("variant", "share", "what it does there, and what is worse than in the base", style::strong);
    for (Proof.InVariant variant : proof.variants()) {
      row(ProofVariants.name(variant), ReportNumbers.percent(variant.share()), ProofVariants.words(variant),
          text -> text);
    }
    proof.tree().notFor().forEach(left -> row(left.name(), "", ProofVariants.NOT_PROVED, text -> text));
    out.append('\n');
  }

  private void endings() {
    row("ends at", "likelihood", "what arrives", style::strong);
    for (Proof.Ending ending : proof.endings()) {
      row(title(ending), ReportNumbers.percent(ending.likelihood()), who(ending) + byExclusion(ending), text -> text);
      if (ending.end() instanceof End.HandedOn on) {
        onward(OnwardShares.words(proof, on.tree()));
      }
    }
    proof.outcomes().stream().filter(outcome -> outcome.claimed() && !Share.isAll(outcome.found()))
        .forEach(outcome -> wrapped("  not always found: ",
            outcome.name() + ", in " + ReportNumbers.percent(outcome.found()) + " of installations"));
    out.append('\n');
  }

  private void onward(String words) {
    if (!words.isEmpty()) {
      wrapped("     in the end: ", words);
    }
  }

  private void repairs() {
    if (proof.repairs().isEmpty()) {
      return;
    }
    row("repair after", "proved", "wrong repair noticed", style::strong);
    for (Proof.Repair repair : proof.repairs()) {
      String unmodeled = repair.unmodeled().isEmpty() ? ""
          : "; not in the circuit: " + String.join(", ", repair.unmodeled());
      row(repair.title(), ReportNumbers.percent(repair.passed()),
          ReportNumbers.percent(repair.noticed()) + unmodeled, text -> text);
    }
    out.append('\n');
  }

  private void pairs() {
    if (proof.pairs().isEmpty()) {
      return;
    }
    double all = proof.whole().likelihood();
    line(style.strong("  two faults that come together, with their likelihood, and where they end"));
    for (PairOutcome pair : proof.pairs()) {
      wrapped("  ", pair.name() + ", " + ReportNumbers.percent(all == 0 ? 0 : pair.likelihood() / all));
      wrapped("    ", PairWords.of(pair));
    }
    out.append('\n');
  }

  private void intermittent() {
    if (proof.intermittent().faults().isEmpty()) {
      return;
    }
    line(style.strong("  faults that come and go: gone from some check on, where each check counts alike"));
    wrapped("  ", IntermittentText.of(proof.intermittent().all()));
    for (IntermittentFaults.WrongPart wrong : proof.intermittent().wrongParts()) {
      wrapped("  ", IntermittentText.of(wrong));
      wrapped("    ", IntermittentText.checks(proof.tree(), wrong.path()));
    }
    out.append('\n');
  }

  private static String title(Proof.Ending ending) {
    return ending.end() instanceof End.HandedOn ? "-> " + ending.title()
        : ending.end() instanceof End.Stuck ? "no answer at " + ending.title() : ending.title();
  }

  private String byExclusion(Proof.Ending ending) {
    String mark = ending.end() instanceof End.Finding finding ? IntermittentText.mark(proof, finding.step()) : "";
    return mark.isEmpty() ? "" : "; " + mark;
  }

  private static String who(Proof.Ending ending) {
    boolean names = !ending.named().isEmpty();
    List<Proof.Arrived> shown = ending.arrived().stream().filter(one -> !names || one.named() || one.share() >= 0.001)
        .toList();
    String first = shown.stream().limit(names ? shown.size() : MOST_NAMED)
        .map(one -> one.fault() + (Share.isAll(one.share()) ? "" : " " + ReportNumbers.percent(one.share()))
            + (names && !one.named() ? " (not named)" : ""))
        .collect(Collectors.joining(", "));
    return names || shown.size() <= MOST_NAMED ? first : first + " and " + (shown.size() - MOST_NAMED) + " more";
  }

  private void limits() {
    if (proof.checks().stream().allMatch(check -> check.limits().isEmpty())) {
      return;
    }
    row("limit", "", "sound range, and what goes the wrong way", style::strong);
    for (Proof.Check check : proof.checks()) {
      Step.MeterCheck step = (Step.MeterCheck) proof.tree().steps().get(check.step());
      for (Proof.Limit limit : check.limits()) {
        Place place = step.source().placeAt(step.ways().get(limit.upperWay()).answerSpan().start());
        String unit = step.quantity().unit();
        row(check.title() + ", line " + place.line(), ReportNumbers.number(limit.at()) + " " + unit,
            Bounds.words(limit, unit) + wrong(limit), text -> text);
      }
    }
  }

  private static String wrong(Proof.Limit limit) {
    String who = limit.misrouted().stream().filter(one -> one.share() > 0 || one.healthy())
        .map(one -> one.fault() + " " + (one.share() == 0 ? "in the worst case" : ReportNumbers.percent(one.share()))
            + ", at " + one.circumstances())
        .limit(MOST_NAMED).collect(Collectors.joining("; "));
    return who.isEmpty() ? "; none wrong" : "; wrong: " + who;
  }

  private void fact(String name, String words) {
    wrapped("  " + name + " ".repeat(Math.max(1, 14 - name.length())), words);
  }

  private void row(String name, String number, String words, UnaryOperator<String> dress) {
    String shown = Columns.printable(name);
    String cut = shown.length() > NAME ? shown.substring(0, NAME - 1) + "…" : shown;
    String label = "  " + cut + " ".repeat(NAME - cut.length()) + " ".repeat(Math.max(0, NUMBER - number.length()))
        + number + "  ";
    int width = label.length();
    out.append(dress.apply(label + Wrap.text(Columns.printable(words), width, width))).append('\n');
  }

  private void wrapped(String label, String words) {
    out.append(label).append(Wrap.text(Columns.printable(words), label.length(), label.length())).append('\n');
  }

  private void line(String text) {
    out.append(text).append('\n');
  }
}
