package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Source;
import rungbook.source.Wording;

/**
 * Every fix that is offered, in the bad example of every page and in every case, removes its problem and brings no
 * error.
 */
@Tag("slow")
class FixesTest {

  static Stream<String> pages() throws IOException {
    return RulePagesTest.pagesWithExample();
  }

  static Stream<String> pagesWithNearName() throws IOException {
    return pages().filter(code -> Wording.of(Code.of(code)).near().isPresent());
  }

  static List<String> cases() throws IOException {
    return CasesTest.cases();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void ofAPageRemovesItsProblem(String code) throws IOException {
    assertFixesWork(Example.library(Example.under("Bad", Files.readString(Path.of("docs/rules", code + ".md")))));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void ofACaseRemovesItsProblem(String name) throws IOException {
    assertFixesWork(Example.library(Files.readString(Path.of("src/test/resources/cases", name))));
  }

  /** Where a nearest name is offered there is a fix that writes it. */
  @ParameterizedTest
  @MethodSource("pagesWithNearName")
  void isThereForEveryNearName(String code) throws IOException {
    List<Problem> problems = Example.problemsUnder("Bad", Files.readString(Path.of("docs/rules", code + ".md")));
    List<Problem> near = problems.stream().filter(problem -> problem.facts().containsKey("near")).toList();
    assertFalse(near.isEmpty());
    near.forEach(problem -> assertTrue(problem.fix().isPresent(), problem.toString()));
  }

  private static void assertFixesWork(Library library) {
    for (Problem problem : library.found().shown()) {
      if (problem.fix().isPresent()) {
        Map<Code, Long> before = count(library.found().shown());
        List<Problem> after = Example.compile(fixed(library.text(), problem.fix().get())).found().shown();
        assertEquals(before.get(problem.code()) - 1, count(after).getOrDefault(problem.code(), 0L),
            problem + "\n" + after);
        after.stream().filter(other -> Wording.of(other).severity() == Severity.ERROR)
            .forEach(other -> assertTrue(count(after).get(other.code()) <= before.getOrDefault(other.code(), 0L),
                problem + " brings " + other));
      }
    }
  }

  private static LibraryText fixed(LibraryText text, Fix fix) {
    var texts = new TreeMap<>(text.texts());
    var byFile = new TreeMap<String, List<Edit>>();
    fix.edits().forEach(edit -> byFile.computeIfAbsent(edit.source().name(), name -> new ArrayList<>()).add(edit));
    byFile.forEach((name, edits) -> texts.put(name, new Source(name, Fix.apply(texts.get(name).text(), edits))));
    return new LibraryText(texts, text.pictures(), text.unreadable());
  }

  private static Map<Code, Long> count(List<Problem> problems) {
    return problems.stream().collect(Collectors.groupingBy(Problem::code, Collectors.counting()));
  }
}
