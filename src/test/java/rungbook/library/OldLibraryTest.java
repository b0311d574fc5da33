package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.tree.Step;

/**
 * A check fails the starter library as it once was, in each way in which it could hurt somebody, and passes today's.
 * The files in {@code src/test/resources/old-library} are that library's, of 25 November 2026, put in place of today's
 * trees of the same name. One word is adapted: the fault {@code contactor pole 1 burned} is now spelled so.
 */
class OldLibraryTest {

  private static final Path OLD = Path.of("src/test/resources/old-library");
  private static final LibraryText OLD_TEXT = read();
  private static final Library WITH_OLD = withOld();

  private static final String NO_COOLING = "trees/no-cooling-blower-runs.md";
  private static final String OUTDOOR_UNIT = "trees/outdoor-unit-silent-24-volts-present.md";
  private static final String FAN_COIL = "trees/fan-coil-no-electric-heat.md";
  private static final String HEAT_PUMP = "trees/heat-pump-warm-air-in-cooling.md";
  private static final String MAKE_DEAD = "shared/fragments/make-outdoor-unit-dead.md";
  private static final String DOOR_SWITCH = "shared/fragments/open-furnace-live.md";

  /** A way in which the old library could hurt somebody, the code that says so, and the old files that have it. */
  enum Hazard {
    DISCONNECT_SWITCHED_UNDER_LOAD("switched-under-load", NO_COOLING, OUTDOOR_UNIT, FAN_COIL, HEAT_PUMP, MAKE_DEAD),
    REPAIR_IN_PROSE("finding-without-repair", NO_COOLING, OUTDOOR_UNIT, FAN_COIL, HEAT_PUMP),
    DEAD_PROVED_IN_PROSE_ONLY("proof-in-words", NO_COOLING, OUTDOOR_UNIT, FAN_COIL, HEAT_PUMP),
    DOOR_SWITCH_TOUCHED_WITHOUT_PROOF("bypass-not-proved", DOOR_SWITCH);

    private final String code;
    private final Set<String> files;

    Hazard(String code, String... files) {
      this.code = code;
      this.files = new TreeSet<>(Arrays.asList(files));
    }
  }

  @ParameterizedTest
  @EnumSource(Hazard.class)
  void checkFailsTheOldLibrary(Hazard hazard) {
    List<Problem> found = problems(WITH_OLD).filter(problem -> problem.code().name().equals(hazard.code))
        .filter(problem -> OLD_TEXT.texts().containsKey(problem.source().name())).toList();
    assertEquals(hazard.files, found.stream().map(problem -> problem.source().name())
        .collect(Collectors.toCollection(TreeSet::new)));
    found.forEach(problem -> assertEquals(Severity.ERROR, Wording.of(problem).severity()));
  }

  /** Whether the lines of a finding closed up first or not, none of its repair was in steps. */
  @Test
  void everyFindingOfTheOldFanCoilIsReported() {
    long findings = WITH_OLD.tree("fan-coil-no-electric-heat").orElseThrow().tree().steps().stream()
        .filter(step -> step instanceof Step.Finding finding && !finding.faults().isEmpty()).count();
    assertEquals(findings, problems(WITH_OLD).filter(problem -> problem.source().name().equals(FAN_COIL))
        .filter(problem -> problem.code().name().equals("finding-without-repair")).count());
  }

  @ParameterizedTest
  @EnumSource(Hazard.class)
  void checkPassesTodaysLibrary(Hazard hazard) {
    assertTrue(problems(StarterLibrary.LIBRARY).noneMatch(problem -> problem.code().name().equals(hazard.code)));
  }

  private static Stream<Problem> problems(Library library) {
    return library.trees().stream().flatMap(tree -> tree.problems().stream());
  }

  private static Library withOld() {
    var texts = new TreeMap<>(StarterLibrary.LIBRARY.text().texts());
    texts.putAll(OLD_TEXT.texts());
    return LibraryCompiler.compile(new LibraryText(texts, StarterLibrary.LIBRARY.text().pictures(), List.of()));
  }

  private static LibraryText read() {
    try {
      return Folder.read(OLD);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
