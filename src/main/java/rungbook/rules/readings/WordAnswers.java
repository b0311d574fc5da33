package rungbook.rules.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.system.Names;
import rungbook.tree.Answer;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** Every possible case has an answer, and every answer accepts a case that no other does. */
public final class WordAnswers implements Rule {

  static final Code ANSWER_MISSING = Code.of("answer-missing");
  static final Code ANSWERS_UNDECIDED = Code.of("answers-undecided");

  @Override
  public List<Code> codes() {
    return List.of(ANSWER_MISSING, ANSWERS_UNDECIDED, AnswerUnreachable.ANSWER_UNREACHABLE);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (Step step : context.tree().steps()) {
      if (step.ways().size() < 2) {
        continue; // a task's only way needs no other, and a check with only one is reported as such
      }
      if (step instanceof Step.SenseCheck check && !check.things().isEmpty()) {
        inspect(step, values(check, context), check.things().get(0).span(), out);
      } else if (step instanceof Step.Task || step instanceof Step.Finding) {
        inspect(step, List.of(List.of()), step.header().titleSpan(), out);
      }
    }
  }

  /** By thing: the keys of the values that it can show, as far as the system lists them. */
  private static List<List<String>> values(Step.SenseCheck check, RuleContext context) {
    return check.things().stream().map(thing -> context.tree().system()
        .map(system -> system.sights().get(thing.key()))
        .map(sight -> sight.values().stream().map(Names::key).toList()).orElse(List.<String>of())).toList();
  }

  private static void inspect(Step step, List<List<String>> values, Span place, Problems out) {
    List<Way> ways = step.ways();
    var rows = new ArrayList<Answer.Words>(ways.size());
    var at = new ArrayList<Way>(ways.size());
    Optional<Way> rest = Optional.empty();
    for (Way way : ways) {
      if (way.answer() instanceof Answer.Words words) {
        rows.add(words);
        at.add(way);
      } else if (way.answer() instanceof Answer.AnythingElse) {
        rest.ifPresent(first -> report(step, way, out));
        rest = rest.or(() -> Optional.of(way));
      } else {
        return;
      }
    }
    inspect(step, new WordMatrix(rows, values), at, rest, place, out);
  }

  private static void inspect(Step step, WordMatrix matrix, List<Way> at, Optional<Way> rest, Span place,
      Problems out) {
    PatternMatrix patterns = matrix.patterns();
    for (int row = 0; row < at.size(); row++) {
      if (patterns.isUseless(row)) {
        report(step, at.get(row), out);
      }
    }
    Optional<List<String>> missing = patterns.missing();
    if (patterns.gaveUp()) {
      out.add(Problem.at(ANSWERS_UNDECIDED, step.source(), place).with("step", step.title()));
    } else if (missing.isPresent() && rest.isEmpty() && step.header().section().unread().isEmpty()) {
      out.add(Problem.at(ANSWER_MISSING, step.source(), place).with("step", step.title())
          .with("answer", missing.get().stream().collect(Collectors.joining(", ")))
          .shownBy(new Witness.Answers(missing.get())));
    } else if (missing.isEmpty() && rest.isPresent() && matrix.isClosed()) {
      report(step, rest.get(), out);
    }
  }

  private static void report(Step step, Way way, Problems out) {
    out.add(Problem.at(AnswerUnreachable.ANSWER_UNREACHABLE, step.source(), way.answerSpan()).with("answer",
        way.written()));
  }
}
