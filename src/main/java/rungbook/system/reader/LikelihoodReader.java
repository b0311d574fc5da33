package rungbook.system.reader;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;
import rungbook.source.Code;

/** Reads {@code likelihood N} of a fault: a weight against the other faults. */
final class LikelihoodReader {

  static final Code LIKELIHOOD_UNREADABLE = Code.of("likelihood-unreadable");

  private static final String WORD = "likelihood";

  private static final double USUAL = 1;

  private static final Pattern NUMBER = Pattern.compile("likelihood (-?\\d+(?:\\.\\d+)?)");

  private final SystemProblems problems;

  LikelihoodReader(SystemProblems problems) {
    this.problems = problems;
  }

  static boolean isLikelihood(Entry.Item item) {
    return item.text().equals(WORD) || item.text().startsWith(WORD + " ");
  }

  /** The weight that a line states once; 1 if it states none or one that cannot be. */
  double read(Entry entry) {
    List<Entry.Item> stated = entry.value().contains(WORD)
        ? entry.items().stream().filter(LikelihoodReader::isLikelihood).toList() : List.of();
    if (stated.isEmpty()) {
      return USUAL;
    }
    Entry.Item last = stated.get(stated.size() - 1);
    Matcher number = NUMBER.matcher(last.text());
    if (stated.size() > 1 || !number.matches()) {
      problems.add(LIKELIHOOD_UNREADABLE, last.span(), "name", entry.key(), "written", last.text());
      return USUAL;
    }
    double weight = Double.parseDouble(number.group(1));
    if (weight > 0 && weight <= PartLine.MOST_QUANTITY) {
      return weight;
    }
    problems.add(PartReader.ABSURD_QUANTITY, last.span(), "name", entry.key());
    return USUAL;
  }
}
