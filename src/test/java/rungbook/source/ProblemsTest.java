package rungbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemsTest {

  @Test
  void sameProblemAtTheSamePlaceCountsOnceAndAllStandInReadingOrder() {
    Source a = new Source("a.md", "12345");
    Source b = new Source("b.md", "12345");
    Problems problems = new Problems();
    problems.add(problem("late", b, Span.at(1)));
    problems.add(problem("second", a, Span.at(4)));
    problems.add(problem("first", a, Span.at(2)).with("tree", "one"));
    problems.add(problem("first", a, Span.at(2)).with("tree", "two"));
    assertEquals(List.of("first", "second", "late"),
        problems.inReadingOrder().stream().map(problem -> problem.code().name()).toList());
  }

  private static Problem problem(String code, Source source, Span span) {
    return Problem.at(Code.of(code), source, span);
  }
}
