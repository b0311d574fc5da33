package rungbook.web.record;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rungbook.text.Sha256;
import rungbook.web.record.PracticeResults.Round;

/** Reads the results of practice. What the published schema takes is read, and nothing else. */
final class PracticeReader {
  static final String FORMAT = "rungbook-practice/1";
  static final int LEVELS = 10;
  /** How many rounds one text may have; the rest of the limits leave room for the longest real round. */
  static final int MOST_ROUNDS = 1000;
  static final int MOST_FAULTS = 10;
  static final int MOST_ACTS = 1000;
  static final int MOST_NAME = 200;
  static final int MOST_WORDS = 1000;
  static final double MOST_MINUTES = 100_000;
  /** An exercise may name every fault of a large system. */
  static final Pattern EXERCISE = Pattern.compile("(\\d{1,2}-\\d{1,9}-\\d{1,2}(-[\\d.]{1,4000})?)?");
  static final String NO_EXERCISE = "no code such as 3-8123-4, nor empty";
  private static final String ANY_FORMAT = "rungbook-practice/";
  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");
  private static final String HINT = "send the results as the practice page wrote them; "
      + "docs/practice.md has their form";
  private static final Set<String> RESULTS = Set.of("format", "system", "digest", "name", "rounds");
  private static final Set<String> ROUND = Set.copyOf(List.of("level", "seed", "exercise", "variant", "faults", "named",
      "right", "minutes", "walked", "unsafe", "way", "started", "ended"));

  private PracticeReader() {}

  /** Whether this calls itself results of practice, of whatever edition, in full or short. */
  static boolean isPractice(Fields whole) {
    return whole.node().path("format").asText().startsWith(ANY_FORMAT)
        || whole.node().path("f").asText().startsWith(ANY_FORMAT);
  }

  static PracticeResults read(Fields whole) {
    try {
      return whole.has("f") ? ShortPractice.read(whole) : full(whole);
    } catch (RecordFault fault) {
      throw new RecordFault(fault.says(), HINT);
    }
  }

  private static PracticeResults full(Fields results) {
    format(results, "format");
    results.onlyKnown(RESULTS, "results of practice");
    var system = results.boundedText("system", 1, MOST_NAME);
    var name = results.boundedText("name", 0, MOST_NAME);
    var rounds = results.boundedEach("rounds", 1, MOST_ROUNDS,
        item -> round(new Fields(item.node(), item.place())));
    var began = rounds.get(0).started().map(String::valueOf).orElse("");
    return new PracticeResults(id(String.join("\0", system, name, began)), system,
        results.text("digest", DIGEST, "not 64 hexadecimal digits"), name, rounds, false);
  }

  static void format(Fields results, String name) {
    if (!results.text(name).equals(FORMAT)) {
      throw Fields.wrong(name, "is not `" + FORMAT + "`, which is all that this server reads");
    }
  }

  /** Results have no id of their own: those that begin with the same round of the same learner are the same. */
  static String id(String what) {
    return Sha256.hex((FORMAT + "\0" + what).getBytes(StandardCharsets.UTF_8)).substring(0, 16);
  }

  private static Round round(Fields round) {
    round.onlyKnown(ROUND, "a round");
    round.count("seed", 0);
    round.time("ended");
    var unsafe = round.boundedTexts("unsafe", 0, MOST_ACTS, MOST_WORDS);
    return new Round(round.count("level", 1, LEVELS), round.text("exercise", EXERCISE, NO_EXERCISE),
        round.boundedText("variant", 0, MOST_NAME), round.boundedTexts("faults", 1, MOST_FAULTS, MOST_WORDS),
        round.boundedTexts("named", 1, MOST_FAULTS, MOST_WORDS), round.yesOrNo("right"),
        round.number("minutes", MOST_MINUTES), round.number("walked", MOST_MINUTES), unsafe.size(), unsafe,
        round.boundedTexts("way", 0, MOST_ACTS, MOST_WORDS), Optional.of(round.time("started")));
  }
}
