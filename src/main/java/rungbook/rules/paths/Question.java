package rungbook.rules.paths;

import java.util.ArrayList;
import java.util.List;
import rungbook.rules.flow.FactTable;
import rungbook.system.Names;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The questions of a check: two checks with the same question get the same answer if the equipment's state is the same.
 */
final class Question {

  private Question() {}

  /** One question for each thing that is checked; none if the text does not say where to read. */
  static List<String> of(Step.Check check) {
    String place = FactTable.place(check);
    List<String> questions = new ArrayList<>(1);
    if (check instanceof Step.MeterCheck meter && meter.stated().isPresent()) {
      questions.add(meter.quantity().name() + '|' + Names.key(meter.measured()) + '|' + place);
    } else if (check instanceof Step.MeterCheck meter && !meter.leads().isEmpty()) {
      questions.add(meter.quantity().name() + '|' + leads(meter) + '|' + place);
    } else if (check instanceof Step.SenseCheck sense) {
      sense.things().forEach(thing -> questions.add(sense.sense().name() + '|' + thing.key() + '|' + place));
    }
    return questions;
  }

  /**
   * The questions of a check that another tree may ask too: what is seen here and heard there is one thing, and two
   * meters with different scales do not show the same.
   */
  static List<String> acrossTrees(Step.Check check, Tree tree) {
    String system = tree.system().map(known -> known.id()).orElse("");
    if (check instanceof Step.SenseCheck sense) {
      return sense.things().stream().map(thing -> system + '|' + thing.key() + '|' + FactTable.place(check)).toList();
    }
    String scale = String.valueOf(tree.meter().scale(((Step.MeterCheck) check).quantity()));
    return of(check).stream().map(question -> system + '|' + question + '|' + scale).toList();
  }

  /** In a fixed order: swapping the leads does not change an AC reading, and only the sign of a DC reading. */
  private static String leads(Step.MeterCheck meter) {
    String red = meter.leads().get(0).key();
    String black = meter.leads().size() > 1 ? meter.leads().get(1).key() : "";
    return red.compareTo(black) <= 0 ? red + '|' + black : black + '|' + red;
  }
}
