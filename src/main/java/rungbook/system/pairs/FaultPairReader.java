package rungbook.system.pairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.FaultPair;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/** Reads the items {@code with FAULT at N %} in the lines of {@code faults}. */
public final class FaultPairReader {

  static final Code PAIR_SHARE = Code.of("pair-share");
  static final Code PAIR_TWICE = Code.of("pair-twice");
  public static final Code PAIR_UNKNOWN = Code.of("pair-unknown");
  static final Code PAIR_WITH_ITSELF = Code.of("pair-with-itself");

  /** A fault that always brings another is one fault with the effects of both. */
  private static final double MOST_PERCENT = 99;

  /** A limit, because every unknown name is compared with every known one. */
  private static final int MOST_SUGGESTIONS = 20;

  private static final String BEGINNING = "with ";

  private static final Pattern WITH = Pattern.compile("with (.+?)(?: at ([^ ]+) ?%)?", Pattern.DOTALL);
  private static final Pattern PERCENT = Pattern.compile("\\d{1,3}(?:\\.\\d{1,9})?");

  private final Document document;
  private final Vocabulary vocabulary;
  private final Set<String> faults;
  private final Problems problems;
  private int unknown;

  private FaultPairReader(Document document, Vocabulary vocabulary, Set<String> faults, Problems problems) {
    this.document = document;
    this.vocabulary = vocabulary;
    this.faults = faults;
    this.problems = problems;
  }

  /** Whether an item of a fault's line says that another fault comes with it. */
  public static boolean isPair(String item) {
    return item.startsWith(BEGINNING);
  }

  /**
   * The pairs in the order of the text. A pair with a fault that only some variants have is left out where it is not
   * there.
   *
   * @param faults keys of those of the base or of the variant that is read
   */
  public static List<FaultPair> read(Document document, Vocabulary vocabulary, Set<String> faults,
      Problems problems) {
    var reader = new FaultPairReader(document, vocabulary, faults, problems);
    return document.blocks("faults").stream().flatMap(block -> block.entries().stream())
        .flatMap(reader::ofLine).toList();
  }

  private Stream<FaultPair> ofLine(Entry line) {
    if (!line.value().contains(BEGINNING)) {
      return Stream.of();
    }
    var pairs = new ArrayList<FaultPair>();
    double percent = 0;
    for (Entry.Item item : line.items()) {
      if (isPair(item.text())) {
        Matcher with = WITH.matcher(item.text());
        double share = with.matches() ? percent(with.group(2)) : 0;
        percent += share;
        if (share <= 0 || percent > MOST_PERCENT) {
          problems.add(at(PAIR_SHARE, item).with("name", line.key()));
          return Stream.of();
        }
        add(new FaultPair(Names.key(line.key()), Names.key(with.group(1)), share / 100), item, with.group(1), pairs);
      }
    }
    return pairs.stream().filter(pair -> faults.contains(pair.first()) && faults.contains(pair.second()));
  }

  /** 0 for anything but a number. */
  private static double percent(@Nullable String written) {
    return written != null && PERCENT.matcher(written).matches() ? Double.parseDouble(written) : 0;
  }

  private void add(FaultPair pair, Entry.Item item, String written, List<FaultPair> pairs) {
    if (pair.first().equals(pair.second())) {
      problems.add(at(PAIR_WITH_ITSELF, item).with("name", written));
    } else if (!vocabulary.faults().containsKey(pair.second())) {
      problems.add(at(PAIR_UNKNOWN, item).with("name", written)
          .near(written, ++unknown > MOST_SUGGESTIONS ? Optional.empty()
              : Nearest.to(written, vocabulary.faults().values())));
    } else if (pairs.stream().anyMatch(one -> one.second().equals(pair.second()))) {
      problems.add(at(PAIR_TWICE, item).with("name", written));
    } else {
      pairs.add(pair);
    }
  }

  private Problem at(Code code, Entry.Item item) {
    return Problem.at(code, document.source(), item.span());
  }
}
