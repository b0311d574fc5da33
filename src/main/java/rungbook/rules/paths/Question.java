package rungbook.rules.paths;

import java.util.ArrayList;
import java.util.List;
import rungbook.rules.flow.FactTable;
import rungbook.tree.Step;

/**
 * What a check asks: two checks that ask the same thing of the same equipment in the same state get the same answer.
 */
final class Question {

  private Question() {}

  /** One for each thing that a check asks about; none if the text does not say what is read. */
  static List<String> of(Step.Check check) {
    String place = FactTable.place(check);
    List<String> questions = new ArrayList<>(1);
    if (check instanceof Step.MeterCheck meter && !meter.leads().isEmpty()) {
      questions.add(meter.quantity().name() + '|' + leads(meter) + '|' + place);
    } else if (check instanceof Step.SenseCheck sense) {
      sense.things().forEach(thing -> questions.add(sense.sense().name() + '|' + thing.key() + '|' + place));
    }
    return questions;
  }

  /** In either order: swapping the leads changes no AC reading, and only the sign of a DC one. */
  private static String leads(Step.MeterCheck meter) {
    String red = meter.leads().get(0).key();
    String black = meter.leads().size() > 1 ? meter.leads().get(1).key() : "";
    return red.compareTo(black) <= 0 ? red + '|' + black : black + '|' + red;
  }
}
