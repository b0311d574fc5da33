package rungbook.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import rungbook.map.Diagram;
import rungbook.map.Drawing;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Prose;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.pack.Pack;
import rungbook.pack.Verify;
import rungbook.report.JsonReport;
import rungbook.report.Report;
import rungbook.report.TextReport;
import rungbook.source.Decoding;
import rungbook.source.Problem;
import rungbook.source.Silenced;
import rungbook.source.Source;

/**
 * The starter library with one text replaced, taken through everything that is done with a text: decode, check, word,
 * show, draw, pack, verify.
 */
final class WholeWay {

  static final LibraryText STARTER = starter();

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

  private final String path;
  private final byte[] bytes;
  private final List<Consumer<CompiledTree>> further = new ArrayList<>();

  private WholeWay(String path, byte[] bytes) {
    this.path = path;
    this.bytes = bytes;
  }

  /**
   * @param problems of the text itself and of the trees that use it
   * @param packs made and verified
   * @param millis of processor time
   */
  record Done(List<Problem> problems, int packs, long millis, int longest) {
    List<String> codes() {
      return problems.stream().map(problem -> problem.code().name()).distinct().toList();
    }
  }

  static WholeWay of(String path, String text) {
    return new WholeWay(path, text.getBytes(StandardCharsets.UTF_8));
  }

  static WholeWay of(String path, byte[] bytes) {
    return new WholeWay(path, bytes);
  }

  /** Does more with each tree, such as proving it. */
  WholeWay and(Consumer<CompiledTree> more) {
    further.add(more);
    return this;
  }

  Done go() {
    long start = THREADS.getCurrentThreadCpuTime();
    Decoding.Decoded decoded = Decoding.decode(path, bytes);
    if (decoded.problem().isPresent()) {
      return new Done(List.of(decoded.problem().get()), 0, 0, 0);
    }
    var texts = new TreeMap<>(STARTER.texts());
    texts.put(path, decoded.source());
    LibraryText text = new LibraryText(texts, STARTER.pictures(), List.of());
    var users = new ArrayList<CompiledTree>();
    Library library = LibraryCompiler.readShared(text);
    var problems = new ArrayList<>(library.ofShared().shown());
    var silenced = new ArrayList<>(library.ofShared().silenced());
    PackInput material = new PackInput(library.shared(), text.pictures());
    int longest = show(decoded.source());
    int packs = 0;
    for (String id : path.startsWith("trees/") ? List.of(path.substring(6, path.length() - 3))
        : List.of("no-cooling-blower-runs")) {
      CompiledTree tree = LibraryCompiler.compile(id, texts.get("trees/" + id + ".md"), library.shared(), text);
      users.add(tree);
      problems.addAll(tree.problems());
      silenced.addAll(tree.found().silenced());
      longest = Math.max(longest, Drawing.of(Diagram.of(tree.tree(), Diagram.Shares.UNKNOWN)).length());
      packs += tree.isSound() ? pack(tree, material) : 0;
    }
    longest = Math.max(longest, report(problems, silenced));
    users.forEach(tree -> further.forEach(more -> more.accept(tree)));
    return new Done(problems, packs, (THREADS.getCurrentThreadCpuTime() - start) / 1_000_000, longest);
  }

  private static int show(Source source) {
    Document document = DocumentReader.read(source);
    Prose prose = Prose.of(document, ANYWHERE);
    return prose.whole().length() + prose.introduction().length()
        + document.sections().stream().mapToInt(section -> prose.of(section).length()).sum();
  }

  private static int report(List<Problem> problems, List<Silenced> silenced) {
    Report report = new Report(1, problems, silenced);
    return Math.max(TextReport.of(report, rungbook.report.Style.PLAIN).length(), JsonReport.of(report).length());
  }

  private static int pack(CompiledTree tree, PackInput material) {
    Pack pack = Pack.of(tree.tree(), material, Edition.draft());
    if (!(Verify.of(pack.bytes()) instanceof Verify.Verdict.Intact)) {
      throw new IllegalStateException("a pack that does not verify: " + tree.path());
    }
    return 1;
  }

  private static LibraryText starter() {
    try {
      return Folder.read(Path.of(""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
