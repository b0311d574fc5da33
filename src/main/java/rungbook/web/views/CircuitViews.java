package rungbook.web.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rungbook.ladder.Ladder;
import rungbook.ladder.LadderDrawing;
import rungbook.library.solving.SystemReadings.Outcome;
import rungbook.proof.demand.Activity;
import rungbook.proof.demand.OperatingTable;
import rungbook.proof.demand.ReadingAnswer;
import rungbook.proof.demand.ReadingQuestion;
import rungbook.proof.demand.Shown;
import rungbook.report.demand.ReadingNotes;
import rungbook.report.demand.ReadingWords;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Part;

/** Puts a system's circuit, and an answer about it, into what its page shows. */
public final class CircuitViews {

  private static final int DESK = 880;

  private final ControlSystem system;

  private CircuitViews(ControlSystem system) {
    this.system = system;
  }

  /** @param ladder of the base */
  public static CircuitView of(ControlSystem system, Ladder ladder, OperatingTable table,
      List<CircuitView.Field> fields, CircuitView.Answered answered) {
    var views = new CircuitViews(system);
    return new CircuitView(answered,
        ladder.logic().stream().map(logic -> new CircuitView.Line(logic.name(), logic.when())).toList(),
        table.rows().stream().map(views::row).toList(), table.left(), fields);
  }

  /**
   * @param outcome empty until somebody asks
   * @param ladder of the system that was read, by the name of its variant
   */
  public static CircuitView.Answered answered(Optional<Outcome> outcome, Function<String, Ladder> ladder) {
    Optional<ReadingAnswer> answer = outcome.filter(Outcome.Answered.class::isInstance)
        .map(one -> ((Outcome.Answered) one).answer());
    Ladder shown = ladder.apply(answer.map(one -> one.question().variant()).orElse(""));
    Set<String> current = answer.map(one -> one.activity().withCurrent()).orElse(Set.of());
    return new CircuitView.Answered(LadderDrawing.of(shown, LadderDrawing.NARROW, current),
        LadderDrawing.of(shown, DESK, current), answer.map(CircuitViews::reading),
        outcome.filter(Outcome.Refused.class::isInstance)
            .map(one -> ProblemView.of(((Outcome.Refused) one).problems())).orElse(List.of()));
  }

  private CircuitView.Row row(OperatingTable.Row row) {
    Activity activity = row.activity();
    return new CircuitView.Row(String.join(", ", row.settings()),
        ReadingWords.names(activity.seen(), system.vocabulary()::sightName),
        ReadingWords.names(activity.on(), key -> system.part(key).map(Part::name).orElse(key)));
  }

  private static CircuitView.Reading reading(ReadingAnswer answer) {
    ReadingQuestion question = answer.question();
    Function<String, String> part = key -> ReadingWords.part(key, question);
    List<String> numbers = new ArrayList<>(List.of("", "", ""));
    List<String> notes = List.of();
    if (answer.shown() instanceof Shown.Amounts amounts) {
      numbers = List.of(ReadingWords.amount(amounts.low(), question), ReadingWords.amount(amounts.usual(), question),
          ReadingWords.amount(amounts.high(), question));
      notes = ReadingNotes.of(amounts, question);
    } else if (answer.shown() instanceof Shown.Nothing nothing) {
      notes = List.of(ReadingWords.nothing(nothing.why(), question));
    }
    return new CircuitView.Reading(ReadingWords.leads(question), ReadingWords.settings(question),
        question.fault().map(Fault::name).orElse("none"), numbers.get(0), numbers.get(1), numbers.get(2), notes,
        ReadingWords.names(answer.activity().on(), part), ReadingWords.names(answer.activity().humming(), part),
        ReadingWords.names(answer.activity().seen(), key -> ReadingWords.sight(key, question)));
  }
}
