package rungbook.library;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.library.solving.Prover;
import rungbook.proof.Proving;
import rungbook.source.Decoding;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.system.Vocabulary;
import rungbook.tree.Tree;

/**
 * The fenced examples of a Markdown page as a little library, with the project's own {@code shared/} around them.
 *
 * <p>A fence follows a line with its path in backticks, else it is {@code trees/example.md}. A {@code hex} fence holds
 * bytes. Lines between {@code … 101 times:} and {@code …} stand that often, with {@code {n}} and {@code {n+1}} counting
 * from 1.
 */
public final class Example {

  /** On the starter library's systems: each is solved once for all tests. */
  public static final Prover PROVER = new Prover(StarterProofs.FEW);

  /** On other systems, so many that the starter library's would not be kept beside them. */
  private static final Prover OF_OWN_SYSTEMS = new Prover(StarterProofs.FEW);

  private static final Pattern FENCE = Pattern.compile("(?:^`([^`\\n]+)`\\n\\n)?^(~{4,})(\\w+)\\n(.*?)^\\2$",
      Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern REPEATED = Pattern.compile("^… (\\d+) times:\\n(.*?)^…\\n",
      Pattern.MULTILINE | Pattern.DOTALL);
  private static final SortedMap<String, Source> SHARED = StarterLibrary.sharedTexts(StarterLibrary.TEXT);
  private static final Map<String, Library> COMPILED = new ConcurrentHashMap<>();

  private final TreeMap<String, Source> texts = new TreeMap<>(SHARED);
  private final TreeMap<String, byte[]> others = new TreeMap<>(
      StarterLibrary.TEXT.pictures().subMap("shared/", "shared0"));
  private final List<Problem> unreadable = new ArrayList<>();

  private Example() {}

  /** Every example under a level-2 heading of a page. */
  public static List<Problem> problemsUnder(String heading, String page) {
    return problems(under(heading, page));
  }

  /** The text of a level-2 heading of a page. */
  public static String under(String heading, String page) {
    int start = page.indexOf("\n## " + heading + "\n");
    if (start < 0) {
      throw new IllegalArgumentException("no heading " + heading);
    }
    return page.substring(start + 1, sectionEnd(page, start + 1));
  }

  /** What is wrong with the library that all fences of a text make. */
  public static List<Problem> problems(String text) {
    return library(text).found().shown();
  }

  /** The library that all fences of a text make, compiled once for all tests. */
  public static Library library(String text) {
    Library known = COMPILED.get(text);
    if (known == null) {
      known = compile(libraryText(text));
      COMPILED.put(text, known);
    }
    return known;
  }

  static Library compile(LibraryText text) {
    Library library = StarterLibrary.readShared(text);
    return library.with(text, LibraryCompiler.trees(library, id -> true).toList());
  }

  static Proving.Result prove(Tree tree, Library library) {
    return proverOf(tree, library.text()).prove(tree, library.text(), id -> library.tree(id).map(CompiledTree::tree));
  }

  /** What a proof shows to be wrong with a tree's system. */
  static List<Problem> systemProblems(Tree tree, Library library) {
    return proverOf(tree, library.text()).systemProblems(List.of(tree), library.text());
  }

  /** Keeps the circuits of the starter library's systems apart from those of other texts. */
  static Prover proverOf(Tree tree, LibraryText text) {
    String path = "shared/systems/" + tree.system().map(Vocabulary::id).orElse("") + ".md";
    return Objects.equals(text.texts().get(path), SHARED.get(path)) ? PROVER : OF_OWN_SYSTEMS;
  }

  private static LibraryText libraryText(String text) {
    Example example = new Example();
    Matcher fence = FENCE.matcher(text);
    boolean found = false;
    while (fence.find()) {
      found = true;
      String path = fence.group(1) == null ? "trees/example.md" : fence.group(1);
      example.add(path, fence.group(3).equals("hex") ? bytes(fence.group(4))
          : repeat(fence.group(4)).getBytes(StandardCharsets.UTF_8));
    }
    if (!found) {
      throw new IllegalArgumentException("no example");
    }
    return new LibraryText(example.texts, example.others, example.unreadable);
  }

  private void add(String path, byte[] bytes) {
    if (!path.endsWith(".md")) {
      others.put(path, bytes);
      return;
    }
    Decoding.Decoded decoded = Decoding.decode(path, bytes);
    decoded.problem().ifPresentOrElse(unreadable::add, () -> texts.put(path, decoded.source()));
  }

  /** The next level-2 heading that stands outside a fence. */
  private static int sectionEnd(String page, int start) {
    boolean fenced = false;
    int at = page.indexOf('\n', start) + 1;
    while (at > 0 && at < page.length()) {
      fenced ^= page.startsWith("~~~~", at);
      if (!fenced && page.startsWith("## ", at)) {
        return at;
      }
      at = page.indexOf('\n', at) + 1;
    }
    return page.length();
  }

  private static byte[] bytes(String hex) {
    var bytes = new ByteArrayOutputStream();
    bytes.writeBytes(HexFormat.of().parseHex(hex.replaceAll("\\s", "")));
    return bytes.toByteArray();
  }

  private static String repeat(String text) {
    return REPEATED.matcher(text).replaceAll(match -> {
      var lines = new StringBuilder();
      for (int n = 1; n <= Integer.parseInt(match.group(1)); n++) {
        lines.append(match.group(2).replace("{n}", String.valueOf(n)).replace("{n+1}", String.valueOf(n + 1)));
      }
      return Matcher.quoteReplacement(lines.toString());
    });
  }
}
