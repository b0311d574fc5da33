package rungbook.web.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rungbook.web.record.PracticeResults.Round;

/** The short form of practice results, as QR pictures hold it: a round is a list in a fixed order. */
final class ShortPractice {
  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{24}");
  private static final Set<String> RESULTS = Set.of("f", "s", "d", "n", "r");
  private static final int FIELDS = 7;

  private ShortPractice() {}

  /** It does not say when a round began: only the same text is the same results. */
  static PracticeResults read(Fields results) {
    PracticeReader.format(results, "f");
    results.onlyKnown(RESULTS, "results of practice");
    return new PracticeResults(PracticeReader.id(results.node().toString()),
        results.boundedText("s", 1, PracticeReader.MOST_NAME),
        results.text("d", DIGEST, "not 24 hexadecimal digits"),
        results.boundedText("n", 0, PracticeReader.MOST_NAME),
        results.boundedEach("r", 1, PracticeReader.MOST_ROUNDS, ShortPractice::round), true);
  }

  private static Round round(Fields.Item item) {
    if (!item.node().isArray() || item.node().size() != FIELDS) {
      throw Fields.wrong(item.place(), "is no list of " + FIELDS);
    }
    var named = faults(item, 3, 0);
    return new Round(Fields.count(item.node().get(0), at(item, 0), 1, PracticeReader.LEVELS), exercise(item), "",
        faults(item, 2, 1), named, named.isEmpty(),
        Fields.number(item.node().get(4), at(item, 4), PracticeReader.MOST_MINUTES),
        Fields.number(item.node().get(5), at(item, 5), PracticeReader.MOST_MINUTES),
        Fields.count(item.node().get(6), at(item, 6), 0, PracticeReader.MOST_ACTS), List.of(), List.of(),
        Optional.empty());
  }

  private static String at(Fields.Item item, int index) {
    return item.place() + "[" + index + "]";
  }

  private static String exercise(Fields.Item item) {
    var code = Fields.text(item.node().get(1), at(item, 1));
    if (!PracticeReader.EXERCISE.matcher(code).matches()) {
      throw Fields.wrong(at(item, 1), "is " + PracticeReader.NO_EXERCISE);
    }
    return code;
  }

  private static List<String> faults(Fields.Item item, int index, int least) {
    JsonNode list = item.node().get(index);
    return Fields.boundedTexts(list, at(item, index), least, PracticeReader.MOST_FAULTS, PracticeReader.MOST_WORDS);
  }
}
