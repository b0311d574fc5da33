package rungbook.report.demand;

import java.util.ArrayList;
import java.util.List;
import rungbook.proof.demand.ReadingQuestion;
import rungbook.proof.demand.Shown;

/** What has to be said beside the numbers of a reading. */
public final class ReadingNotes {

  private ReadingNotes() {}

  public static List<String> of(Shown.Amounts amounts, ReadingQuestion question) {
    var notes = new ArrayList<String>();
    ReadingWords.stray(amounts, question).ifPresent(notes::add);
    if (ReadingWords.isBeyondMeter(amounts, question)) {
      notes.add("beyond the range of the meter");
    } else {
      ReadingWords.meterError(amounts, question).ifPresent(notes::add);
    }
    amounts.elsewhere().ifPresent(
        why -> notes.add("in some installations " + ReadingWords.nothing(why, question)));
    return List.copyOf(notes);
  }
}
