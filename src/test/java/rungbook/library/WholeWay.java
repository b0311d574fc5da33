package rungbook.library;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.map.Diagram;
import rungbook.map.Drawing;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Prose;
import rungbook.pack.Pack;
import rungbook.pack.Verify;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.CircuitFacts;
import rungbook.proof.Proving;
import rungbook.report.Report;
import rungbook.report.Style;
import rungbook.report.TextReport;
import rungbook.report.json.JsonReport;
import rungbook.source.Decoding;
import rungbook.source.Problem;
import rungbook.source.Silenced;
import rungbook.source.Source;
import rungbook.source.Wording;

/**
 * The starter library with one text replaced, taken through everything that is done with a text: decode, check, word,
 * show, draw, pack, verify and, on request, prove.
 */
public final class WholeWay {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final Prose.Targets ANYWHERE = new Prose.Targets() {
    @Override
    public Optional<String> link(String written) {
      return Optional.of(written);
    }

    @Override
    public Optional<String> picture(String written) {
      return Optional.of(written);
    }
  };

  /** More than the starter library has trees. */
  private static final int MOST_DRAWN = 20;

  /** The length of the last drawings: most changes of a shared text leave a tree's map as it is. */
  private static final Map<Diagram, Integer> DRAWN = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<Diagram, Integer> eldest) {
      return size() > MOST_DRAWN;
    }
  });

  private final String path;
  private final byte[] bytes;
  private boolean isProved;

  private WholeWay(String path, byte[] bytes) {
    this.path = path;
    this.bytes = bytes;
  }

  /**
   * @param source the text as it was decoded
   * @param problems of the text itself and of the tree that uses it
   * @param packs made and verified
   * @param proofs that show something
   * @param millis of processor time, without those of the proof
   * @param proofMillis of processor time
   * @param longest of all answers, in characters
   */
  public record Done(Source source, List<Problem> problems, int packs, int proofs, long millis, long proofMillis,
      int longest) {
    /** Problems that no text should have: where a guard caught a failure, or a figure is none. */
    public List<String> unfit() {
      return problems.stream()
          .map(problem -> problem.code().name() + ": " + Wording.of(problem).sentence(problem) + "; "
              + Wording.of(problem).hint(problem))
          .map(words -> words.replaceAll("`[^`]*`", "``"))
          .filter(words -> words.matches("(?s)(text-too-costly|proof-failed):.*|.*(NaN|Infinity).*")).toList();
    }
  }

  public static WholeWay of(String path, String text) {
    return new WholeWay(path, text.getBytes(StandardCharsets.UTF_8));
  }

  public static WholeWay of(String path, byte[] bytes) {
    return new WholeWay(path, bytes);
  }

  /** Proves the tree as well. */
  public WholeWay proved() {
    isProved = true;
    return this;
  }

  public Done go() {
    long start = THREADS.getCurrentThreadCpuTime();
    Decoding.Decoded decoded = Decoding.decode(path, bytes);
    if (decoded.problem().isPresent()) {
      return new Done(decoded.problem().get().source(), List.of(decoded.problem().get()), 0, 0, 0, 0, 0);
    }
    LibraryText text = StarterLibrary.with(path, decoded.source());
    Library library = path.startsWith("shared/") ? StarterLibrary.readShared(text)
        : StarterLibrary.LIBRARY.with(text, StarterLibrary.LIBRARY.trees());
    String taker = takerOf(path);
    CompiledTree tree = LibraryCompiler.compile(idOf(taker), text.texts().get(taker), library);
    int longest = Math.max(show(decoded.source()),
        drawnLength(Diagram.of(tree.tree(), Diagram.Shares.UNKNOWN)));
    int packs = tree.isSound() ? pack(tree, new PackInput(library.shared(), text.pictures())) : 0;
    long proving = THREADS.getCurrentThreadCpuTime();
    Optional<Proving.Result> proof = isProved
        ? Optional.of(Example.proverOf(tree.tree(), text).prove(tree.tree(), text, StarterLibrary.TREES::apply))
        : Optional.empty();
    List<Silenced> silenced = Stream.of(library.ofShared().silenced(), tree.found().silenced()).flatMap(List::stream)
        .toList();
    List<Problem> problems = Stream.of(library.ofShared().shown(), tree.problems(),
        proof.map(Proving.Result::problems).orElse(List.of())).flatMap(List::stream).toList();
    longest = Math.max(longest, report(problems, silenced));
    return new Done(decoded.source(), problems, packs,
        (int) proof.flatMap(Proving.Result::proved).stream().count(),
        (proving - start) / 1_000_000, (THREADS.getCurrentThreadCpuTime() - proving) / 1_000_000, longest);
  }

  /** The tree itself, or the first tree that names the shared text. */
  private static String takerOf(String path) {
    if (path.startsWith("trees/")) {
      return path;
    }
    String name = path.substring(path.lastIndexOf('/') + 1, path.length() - ".md".length());
    return StarterLibrary.TEXT.texts().values().stream().filter(other -> other.name().startsWith("trees/"))
        .filter(other -> other.text().replace(' ', '-').contains(":-" + name + "\n")).findFirst().map(Source::name)
        .orElse("trees/no-cooling-blower-runs.md");
  }

  private static String idOf(String path) {
    return path.substring("trees/".length(), path.length() - ".md".length());
  }

  private static int drawnLength(Diagram diagram) {
    Integer known = DRAWN.get(diagram);
    int length = known != null ? known : Drawing.of(diagram).length();
    DRAWN.put(diagram, length);
    return length;
  }

  private static int show(Source source) {
    Document document = DocumentReader.read(source);
    Prose prose = Prose.of(document, ANYWHERE);
    return prose.whole().length() + prose.introduction().length()
        + document.sections().stream().mapToInt(section -> prose.of(section).length()).sum();
  }

  private static int report(List<Problem> problems, List<Silenced> silenced) {
    Report report = new Report(1, problems, silenced);
    return Math.max(TextReport.of(report, Style.PLAIN).length(), JsonReport.of(report).length());
  }

  private static int pack(CompiledTree tree, PackInput material) {
    Pack pack = Pack.of(tree.tree(), CircuitFacts.unknown(), material, Edition.draft());
    if (!(Verify.of(pack.bytes()) instanceof Verify.Verdict.Intact)) {
      throw new IllegalStateException("a pack that does not verify: " + tree.path());
    }
    return 1;
  }
}
