package rungbook.tree.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.proof.MadeUp;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.system.Vocabulary.Sight;
import rungbook.system.Vocabulary;
import rungbook.tree.NameRef;
import rungbook.tree.Shared;
import rungbook.tree.Symptoms;

class SymptomsReaderTest {

  private static final String STEPS = "## Sound\n\n```finding\nhealthy: yes\n```\n";

  private static TreeReader.Read read(String lines) {
    return read(lines, MadeUp.WORDS);
  }

  private static TreeReader.Read read(String lines, Vocabulary words) {
    Shared shared = new Shared(Map.of("lamp", words), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
        Set.of());
    return TreeReader.read("t", DocumentReader.read(
        new Source("trees/t.md", "---\ntitle: T\ncomplaint: C\n" + lines + "---\n\n" + STEPS)), shared);
  }

  private static List<String> problems(String lines) {
    return problems(lines, MadeUp.WORDS);
  }

  private static List<String> problems(String lines, Vocabulary words) {
    return read("system: lamp\n" + lines, words).problems().stream()
        .map(problem -> problem.code() + " " + problem.source().text(problem.span())).toList();
  }

  private static Symptoms symptoms(String lines) {
    return read(lines).tree().symptoms().orElseThrow();
  }

  @Test
  void callAndSightsAreRead() {
    Symptoms symptoms = symptoms("system: lamp\ncall: Lever  ON\nnot seen: Glow\n");
    assertEquals(List.of(new Symptoms.Called("lever", List.of("on"))), symptoms.call());
    assertEquals(List.of("glow"), symptoms.notSeen().stream().map(NameRef::key).toList());
    assertEquals(List.of(), problems("call: lever on\nnot seen: glow\n"));
  }

  @Test
  void positionsOfOneControlMayBeAlternatives() {
    assertEquals(List.of(new Symptoms.Called("lever", List.of("off", "on"))),
        symptoms("system: lamp\ncall: lever off or on or off\nseen: glow\n").call());
    assertEquals(List.of("unknown-position lever off or onn"), problems("call: lever off or onn\nseen: glow\n"));
  }

  @Test
  void treeWithoutTheLinesHasNoSymptoms() {
    assertTrue(read("system: lamp\n").tree().symptoms().isEmpty());
  }

  @Test
  void misspelledNamesHaveAProblemWithAFixAndAreLeftOut() {
    List<Problem> found = read("system: lamp\ncall: lever onn\nnot seen: glwo\n").problems();
    assertEquals(List.of("glow", "on"), found.stream().map(problem -> problem.facts().get("near")).sorted().toList());
    assertTrue(found.stream().allMatch(problem -> problem.fix().isPresent()));
    assertEquals(List.of(), symptoms("system: lamp\nnot seen: glwo\n").notSeen());
  }

  @Test
  void whatCannotHoldAtOnceIsAProblemAtTheSecondWord() {
    assertEquals(List.of("complaint-contradiction glow"), problems("seen: glow\nnot seen: glow\n"));
    assertEquals(List.of("complaint-contradiction lever off"), problems("call: lever on, lever off\nseen: glow\n"));
  }

  @Test
  void twoValuesOfOneSightAtOnceAreAProblemAtTheSecond() {
    Sight light = new Sight("light", Set.of(), List.of("dark", "steady", "2 flashes"));
    Vocabulary words = MadeUp.WORDS;
    var sights = new HashMap<>(words.sights());
    sights.put(light.key(), light);
    var withLight = new Vocabulary(words.id(), words.title(), words.locations(), words.points(), words.controls(),
        sights, words.parts(), words.faults(), words.assemblies());
    assertEquals(List.of("complaint-contradiction light 2 flashes"),
        problems("seen: light dark, light 2 flashes\n", withLight));
    assertEquals(List.of(), problems("seen: light dark, glow, light dark\nnot seen: light steady\n", withLight));
    assertEquals(List.of("complaint-contradiction light dark"),
        problems("seen: light dark\nnot seen: light dark\n", withLight));
  }

  @Test
  void emptyLineAndEmptyNameAreProblems() {
    assertEquals(List.of("value-missing seen"), problems("seen:\n"));
    assertEquals(List.of("item-empty glow,"), problems("seen: glow,\n"));
  }

  @Test
  void withoutASystemAnyNameIsAccepted() {
    assertEquals(List.of(), read("call: handle up\nseen: smoke\n").problems());
    assertEquals(List.of(new Symptoms.Called("handle", List.of("up"))), symptoms("call: handle up\n").call());
  }
}
