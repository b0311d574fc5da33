package rungbook.system.variant;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.Names;

/** Reads the block {@code variants} and the blocks that change the system for one of them. */
public final class VariantTexts {

  public static final Code TOO_MANY_VARIANTS = Code.of("too-many-variants");
  public static final Code VARIANT_BLOCK_UNKNOWN = Code.of("variant-block-unknown");
  public static final Code VARIANT_LINE_UNKNOWN = Code.of("variant-line-unknown");
  public static final Code VARIANT_SHARE = Code.of("variant-share");
  public static final Code VARIANT_SHARES_OVER = Code.of("variant-shares-over");
  public static final Code VARIANT_UNLISTED = Code.of("variant-unlisted");

  /** What a variant can change besides parts. Places and controls are the same in all. */
  static final Set<String> CHANGED = Set.of("parts", "points", "sights", "quantities", "faults", "assemblies");

  /** Each is a circuit of its own to be solved. */
  private static final int MOST = 24;

  private static final Pattern SHARE = Pattern.compile("share (\\d+(?:\\.\\d+)?) ?%");
  private static final String ABOUT = "about ";

  private final Document document;
  private final Problems problems;

  private VariantTexts(Document document, Problems problems) {
    this.document = document;
    this.problems = problems;
  }

  public static List<VariantText> read(Document document, Problems problems) {
    return new VariantTexts(document, problems).read();
  }

  private List<VariantText> read() {
    List<Entry> listed = lines("variants").toList();
    if (listed.size() > MOST) {
      problems.add(at(TOO_MANY_VARIANTS, document.blocks("variants").get(0).kindSpan()).with("most", MOST));
      return List.of();
    }
    List<VariantBlock> blocks = VariantBlock.in(document).filter(block -> isKnown(block, listed)).toList();
    List<VariantText> all = listed.stream().map(entry -> variant(entry, blocks)).toList();
    double shares = all.stream().mapToDouble(VariantText::share).sum();
    if (shares > 1 + 1e-9) {
      problems.add(at(VARIANT_SHARES_OVER, document.blocks("variants").get(0).kindSpan())
          .with("sum", Math.round(1000 * shares) / 10.0));
    }
    return all;
  }

  /** Whether a block changes lines that can be changed, for a variant that is listed. */
  private boolean isKnown(VariantBlock block, List<Entry> listed) {
    List<String> names = listed.stream().map(Entry::key).toList();
    if (names.stream().map(Names::key).noneMatch(block.key()::equals)) {
      problems.add(at(VARIANT_UNLISTED, block.block().kindSpan()).with("name", block.variant())
          .with("known", names.isEmpty() ? "none" : String.join(", ", names)));
      return false;
    }
    if (!CHANGED.contains(block.lines())) {
      problems.add(at(VARIANT_BLOCK_UNKNOWN, block.block().kindSpan()).with("kind", block.lines()).with("known",
          CHANGED.stream().sorted().collect(Collectors.joining(", "))));
      return false;
    }
    return true;
  }

  private VariantText variant(Entry entry, List<VariantBlock> blocks) {
    var text = new VariantText(entry.key(), entry.keySpan(), share(entry), about(entry),
        blocks.stream().filter(block -> block.key().equals(Names.key(entry.key()))).toList());
    CHANGED.forEach(kind -> text.without(kind).forEach(item -> inspect(kind, item)));
    return text;
  }

  private void inspect(String kind, Entry.Item taken) {
    List<String> known = lines(kind).map(Entry::key).toList();
    if (known.stream().map(Names::key).noneMatch(Names.key(taken.text())::equals)) {
      problems.add(at(VARIANT_LINE_UNKNOWN, taken.span()).with("name", taken.text()).with("kind", kind)
          .near(taken.text(), Nearest.to(taken.text(), known)));
    }
  }

  private double share(Entry entry) {
    Optional<Matcher> share = entry.items().stream().map(item -> SHARE.matcher(item.text())).filter(Matcher::matches)
        .findFirst();
    double percent = share.map(match -> Double.parseDouble(match.group(1))).orElse(0.0);
    if (percent <= 0 || percent > 100) {
      problems.add(at(VARIANT_SHARE, entry.keySpan()).with("name", entry.key()));
      return 0;
    }
    return percent / 100;
  }

  /** The words to the end of the line, commas included. */
  private static String about(Entry entry) {
    int from = entry.value().indexOf(ABOUT);
    return from < 0 ? "" : entry.value().substring(from + ABOUT.length()).strip();
  }

  private Problem at(Code code, Span span) {
    return Problem.at(code, document.source(), span);
  }

  private Stream<Entry> lines(String kind) {
    return document.blocks(kind).stream().flatMap(block -> block.entries().stream());
  }
}
