package rungbook.system.reader;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/** Collects the problems of a system. */
final class SystemProblems {

  static final Code EFFECT_NOT_FOR_PART = Code.of("effect-not-for-part");

  /** A limit, because comparing every unknown name with every known one would take minutes in a text full of typos. */
  private static final int MOST_SUGGESTIONS = 20;

  private final Source source;
  private final List<Problem> problems = new ArrayList<>();
  private int unknown;

  SystemProblems(Source source) {
    this.source = source;
  }

  void add(Code code, Span span, String fact, Object value) {
    problems.add(Problem.at(code, source, span).with(fact, value));
  }

  void add(Code code, Span span, String fact, Object value, String second, Object other) {
    problems.add(Problem.at(code, source, span).with(fact, value).with(second, other));
  }

  /** Reports an unknown name and the nearest known one. */
  void unknown(Code code, Span span, String name, Collection<String> known) {
    problems.add(unknownName(code, span, name, known));
  }

  /** Reports an unknown name, the nearest known one, and all the known ones, which are few. */
  void unknownAmong(Code code, Span span, String name, Collection<String> few) {
    problems.add(unknownName(code, span, name, few).with("known", String.join(", ", few)));
  }

  void add(Problem problem) {
    problems.add(problem);
  }

  Source source() {
    return source;
  }

  private Problem unknownName(Code code, Span span, String name, Collection<String> known) {
    return Problem.at(code, source, span).with("name", name).near(name,
        ++unknown > MOST_SUGGESTIONS ? Optional.empty() : Nearest.to(name, known));
  }

  /**
   * Reports an effect that a part of this kind cannot have.
   *
   * @param instead the effects that it can have
   */
  void unfit(Span span, String name, String kind, String done, String instead) {
    problems.add(Problem.at(EFFECT_NOT_FOR_PART, source, span).with("name", name).with("kind", kind).with("done", done)
        .with("instead", instead));
  }

  List<Problem> all() {
    return problems;
  }

  /** How far the problems are, to come back to. */
  record Mark(int problems, int unknown) {}

  Mark mark() {
    return new Mark(problems.size(), unknown);
  }

  List<Problem> since(Mark mark) {
    return problems.subList(mark.problems(), problems.size());
  }

  /** Takes back what was reported since. */
  void backTo(Mark mark) {
    since(mark).clear();
    unknown = mark.unknown();
  }
}
