package rungbook.web.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Bounds;
import rungbook.proof.report.Proof;
import rungbook.system.Quantity;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** The words of a picture of readings: each row's own, and all of them one after the other. */
final class PictureWords {

  private final Proof.Check check;
  private final Tree tree;
  private final Step.MeterCheck step;
  private final Quantity quantity;
  private final BigDecimal digit;

  PictureWords(Proof.Check check, Tree tree) {
    this.check = check;
    this.tree = tree;
    step = (Step.MeterCheck) tree.steps().get(check.step());
    quantity = step.quantity();
    digit = tree.meter().scale(quantity).orElseThrow().digit();
  }

  Optional<Proof.Reads> healthy() {
    return check.reads().stream().filter(Proof.Reads::healthy).findFirst();
  }

  List<Proof.Reads> faults() {
    return check.reads().stream().filter(reads -> !reads.healthy()).toList();
  }

  String goodUnits() {
    return healthy().map(reads -> "Good units read " + range(reads)).orElse("No good unit is read here");
  }

  /** {@code 10 to 26 V: Close up, low voltage outside}. */
  String answer(int way) {
    Way one = step.ways().get(way);
    return one.written() + ": " + title(one);
  }

  /** A step's title; of another tree, the words of the link. */
  private String title(Way way) {
    return way.target() instanceof Target.ToStep to ? tree.steps().get(to.step()).title() : way.label();
  }

  String limit(Proof.Limit limit) {
    String at = limit.words(unit());
    if (limit.worst().isEmpty()) {
      return "✓ " + at + ": can be " + Bounds.words(limit, unit());
    }
    return "! " + at + ": " + (Bounds.leaveRoom(limit) ? moved(limit) : "no limit works");
  }

  private String moved(Proof.Limit limit) {
    return limit.better().map(better -> "move to " + ReportNumbers.number(better) + " " + unit() + "; ").orElse("")
        + "works " + Bounds.words(limit, unit());
  }

  String fault(Proof.Reads reads) {
    return reads.fault() + ": " + range(reads);
  }

  String unit() {
    return quantity.unit();
  }

  private String range(Proof.Reads reads) {
    String low = ReportNumbers.reading(reads.lowest(), digit, quantity);
    String high = ReportNumbers.reading(reads.highest(), digit, quantity);
    return low.equals(high) ? low : low.replace(" " + unit(), "") + " to " + high;
  }

  /** The whole picture, a sentence for each row. */
  List<String> sentences() {
    var all = new ArrayList<String>(List.of(goodUnits() + "."));
    IntStream.range(0, step.ways().size()).filter(this::isDrawn).forEach(way -> all.add("Answer " + answer(way) + "."));
    check.limits().forEach(limit -> all.add("Limit " + limit(limit).substring(2) + "."));
    faults().forEach(reads -> all.add("With the fault " + fault(reads) + "."));
    return all;
  }

  private boolean isDrawn(int way) {
    return check.bands().stream().anyMatch(band -> band.way() == way);
  }
}
