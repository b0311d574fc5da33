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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
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
@Tag("slow")
class SafetyMutantsTest {

  private static final Path PAGE = Path.of("docs/safety-mutants.md");
  private static final String TABLE = "| change | changes | check | only prove | hurts nobody | nothing |\n"
      + "|---|---|---|---|---|---|\n";
  private static final String MISSED = "| change that nothing notices | file | what | times |\n|---|---|---|---|\n";
  private static final Library LIBRARY = StarterLibrary.LIBRARY;
  private static final Map<String, Map<Code, Long>> CHECKED = new HashMap<>();
  private static final Map<String, Map<Code, Long>> PROVED = new HashMap<>();

  private enum Caught { BY_CHECK, BY_PROOF, HURTS_NOBODY, BY_NOTHING }

  /**
   * Removals that can kill: a check notices each, or it hurts nobody, or the page says why it is missed. With
   * {@code -Drungbook.short=true} every eighth.
   */
  @ParameterizedTest
  @EnumSource(names = {"ISOLATE_REMOVED", "TRY_REMOVED", "POINT_NOT_PROVED_DEAD", "RESTORE_REMOVED"})
  void checkNoticesWhatCanHurt(Kind kind) throws IOException {
    List<Mutant> all = mutants().filter(mutant -> mutant.kind() == kind).toList();
    assertTrue(!all.isEmpty(), "no text has such a line");
    String page = Files.readString(PAGE);
    assertEquals(List.of(), ShortRun.oneIn(8, all).filter(mutant -> !isNoticedByCheck(mutant) && !hurtsNobody(mutant))
        .map(SafetyMutantsTest::missed).filter(row -> !page.contains(row)).toList());
  }

  @Test
  void pageNamesEveryKind() throws IOException {
    if (Boolean.getBoolean("mutants.write")) {
      String page = Files.readString(PAGE);
      Files.writeString(PAGE, page.substring(0, page.indexOf(TABLE)) + tables());
    }
    String page = Files.readString(PAGE);
    List<String> rows = page.substring(page.indexOf(TABLE), page.indexOf(MISSED)).lines()
        .filter(line -> line.startsWith("| ")).skip(1).map(line -> line.split(" \\| ")[0].substring(2)).toList();
    assertEquals(Stream.of(Kind.values()).map(Kind::words).toList(), rows);
  }

  private static String tables() {
    Map<Kind, Map<Caught, Integer>> counts = new EnumMap<>(Kind.class);
    Map<String, Integer> missed = new LinkedHashMap<>();
    mutants().forEach(mutant -> {
      Caught caught = caught(mutant);
      counts.computeIfAbsent(mutant.kind(), kind -> new EnumMap<>(Caught.class)).merge(caught, 1, Integer::sum);
      if (caught == Caught.BY_NOTHING) {
        missed.merge(missed(mutant), 1, Integer::sum);
      }
    });
    return TABLE + Stream.of(Kind.values()).map(kind -> row(kind, counts.getOrDefault(kind, Map.of())))
        .collect(Collectors.joining()) + "\n" + MISSED
        + missed.entrySet().stream().sorted(Map.Entry.comparingByKey())
            .map(row -> row.getKey() + row.getValue() + " |\n").collect(Collectors.joining());
  }

  /** A row of the page's second table, up to the number of such changes. Cautions are counted together. */
  private static String missed(Mutant mutant) {
    String where = mutant.kind() == Kind.CAUTION_REMOVED ? "" : mutant.path().replaceFirst(".*/", "");
    String what = mutant.item().isEmpty() ? mutant.was().replaceFirst("^- ", "").replaceFirst(": \\[.*", "")
        : mutant.item();
    return "| " + mutant.kind().words() + " | " + where + " | " + what + " | ";
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
    return isNoticedByCheck(mutant) ? Caught.BY_CHECK
        : isProved(mutant.kind()) && isNoticedByProof(mutant) ? Caught.BY_PROOF
            : hurtsNobody(mutant) ? Caught.HURTS_NOBODY : Caught.BY_NOTHING;
  }

  /** A proof looks at no caution. */
  private static boolean isProved(Kind kind) {
    return kind != Kind.CAUTION_REMOVED;
  }

  private static boolean hurtsNobody(Mutant mutant) {
    return HarmlessMutants.why(mutant, LIBRARY.trees()).isPresent();
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
    var around = new Library(text, shared, LIBRARY.words(),
        mutant.path().startsWith("trees/") ? LIBRARY.trees() : List.of(), LIBRARY.ofShared(), Map.of());
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
