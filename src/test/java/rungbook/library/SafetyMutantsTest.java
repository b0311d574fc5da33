package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungbook.library.SafetyMutants.Kind;
import rungbook.library.SafetyMutants.Mutant;
import rungbook.markdown.DocumentReader;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.system.Names;
import rungbook.tree.Shared;

/**
 * How many careless changes of the starter library a check notices. {@code -Dmutants.write=true} also proves what the
 * check lets pass, and writes {@code docs/safety-mutants.md}.
 */
class SafetyMutantsTest {

  private static final Path PAGE = Path.of("docs/safety-mutants.md");
  private static final String TABLE = "| change | changes | check | only prove | nothing |\n|---|---|---|---|---|\n";
  private static final Library LIBRARY = StarterProofs.LIBRARY;
  private static final Map<String, Map<Code, Long>> CHECKED = new HashMap<>();
  private static final Map<String, Map<Code, Long>> PROVED = new HashMap<>();

  /** The least share, in percent, of the changes of a kind that a check alone must notice. */
  private static final Map<Kind, Integer> FLOORS = new EnumMap<>(Map.of(Kind.TRY_REMOVED, 100,
      Kind.POINT_NOT_PROVED_DEAD, 60, Kind.RESTORE_REMOVED, 60));

  private enum Caught { BY_CHECK, BY_PROOF, BY_NOTHING }

  @ParameterizedTest
  @EnumSource(names = {"TRY_REMOVED", "POINT_NOT_PROVED_DEAD", "RESTORE_REMOVED"})
  void checkNoticesWhatCanHurt(Kind kind) {
    List<Mutant> all = mutants().filter(mutant -> mutant.kind() == kind).toList();
    assertTrue(!all.isEmpty(), "no text has such a line");
    List<String> missed = all.stream().filter(mutant -> !isNoticedByCheck(mutant))
        .map(mutant -> mutant.path() + ":" + mutant.line()).toList();
    assertTrue(100 * (all.size() - missed.size()) >= FLOORS.get(kind) * all.size(),
        () -> missed.size() + " of " + all.size() + " pass: " + missed);
  }

  @Test
  void pageNamesEveryKind() throws IOException {
    if (Boolean.getBoolean("mutants.write")) {
      String page = Files.readString(PAGE);
      Files.writeString(PAGE, page.substring(0, page.indexOf(TABLE)) + TABLE + rows());
    }
    List<String> rows = Files.readString(PAGE).lines().filter(line -> line.startsWith("| ")).skip(1)
        .map(line -> line.split(" \\| ")[0].substring(2)).toList();
    assertEquals(Stream.of(Kind.values()).map(Kind::words).toList(), rows);
  }

  private static String rows() {
    Map<Kind, Map<Caught, Integer>> counts = new EnumMap<>(Kind.class);
    mutants().forEach(mutant -> counts.computeIfAbsent(mutant.kind(), kind -> new EnumMap<>(Caught.class))
        .merge(caught(mutant), 1, Integer::sum));
    return Stream.of(Kind.values()).map(kind -> row(kind, counts.getOrDefault(kind, Map.of())))
        .collect(Collectors.joining());
  }

  private static String row(Kind kind, Map<Caught, Integer> counts) {
    List<String> cells = new ArrayList<>(List.of(kind.words(),
        String.valueOf(counts.values().stream().mapToInt(count -> count).sum())));
    Stream.of(Caught.values()).forEach(caught -> cells.add(String.valueOf(counts.getOrDefault(caught, 0))));
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private static Stream<Mutant> mutants() {
    return LIBRARY.text().texts().entrySet().stream()
        .filter(text -> text.getKey().startsWith("trees/") || text.getKey().startsWith("shared/fragments/"))
        .flatMap(text -> SafetyMutants.of(text.getKey(), text.getValue().text()).stream());
  }

  private static Caught caught(Mutant mutant) {
    return isNoticedByCheck(mutant) ? Caught.BY_CHECK : isNoticedByProof(mutant) ? Caught.BY_PROOF : Caught.BY_NOTHING;
  }

  private static boolean isNoticedByCheck(Mutant mutant) {
    return changed(mutant).anyMatch(tree -> isMore(count(tree.problems()),
        CHECKED.computeIfAbsent(tree.path(), any -> count(before(tree).problems()))));
  }

  private static boolean isNoticedByProof(Mutant mutant) {
    return changed(mutant).anyMatch(tree -> isMore(proved(tree), PROVED.computeIfAbsent(tree.path(),
        any -> proved(before(tree)))));
  }

  private static CompiledTree before(CompiledTree tree) {
    return LIBRARY.tree(tree.tree().id()).orElseThrow();
  }

  /** The trees with a step of the changed text, compiled one by one as they are asked for. */
  private static Stream<CompiledTree> changed(Mutant mutant) {
    var texts = new TreeMap<>(LIBRARY.text().texts());
    Source source = new Source(mutant.path(), mutant.text());
    texts.put(mutant.path(), source);
    var text = new LibraryText(texts, LIBRARY.text().pictures(), List.of());
    Shared shared = mutant.path().startsWith("trees/") ? LIBRARY.shared() : withFragment(source);
    var around = new Library(text, shared, LIBRARY.words(), List.of(), LIBRARY.ofShared());
    return LIBRARY.trees().stream().filter(tree -> hasStepOf(mutant.path(), tree))
        .map(tree -> LibraryCompiler.compile(tree.tree().id(), texts.get(tree.path()), around));
  }

  private static boolean hasStepOf(String path, CompiledTree tree) {
    return tree.tree().steps().stream().anyMatch(step -> step.source().name().equals(path));
  }

  private static Shared withFragment(Source source) {
    Shared known = LIBRARY.shared();
    var fragments = new HashMap<>(known.fragments());
    String name = Path.of(source.name()).getFileName().toString().replace(".md", "");
    assertNotNull(fragments.put(Names.key(name), DocumentReader.read(source)), source.name());
    return new Shared(known.systems(), known.circuits(), known.meters(), known.cautions(), known.qualifications(),
        fragments, known.trees());
  }

  private static Map<Code, Long> proved(CompiledTree tree) {
    return count(Example.PROVER.prove(tree.tree(), LIBRARY.text(), id -> LIBRARY.tree(id).map(CompiledTree::tree))
        .problems());
  }

  private static Map<Code, Long> count(List<Problem> problems) {
    return problems.stream().collect(Collectors.groupingBy(Problem::code, Collectors.counting()));
  }

  private static boolean isMore(Map<Code, Long> after, Map<Code, Long> before) {
    return after.entrySet().stream().anyMatch(one -> one.getValue() > before.getOrDefault(one.getKey(), 0L));
  }
}
