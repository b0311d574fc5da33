package rungbook.pack.path;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.system.Names;

/**
 * The pairs of points that an author tells people to read, in the author's order: {@code **L1** to **L2**}, {@code each
 * of the four to **ground**}, {@code every pair of **L1**, **N** and **ground**}. Points are in bold.
 */
public final class ProvedPairs {

  private static final String GROUND = "ground";
  private static final String POINT = "«([^«»]+)»";
  private static final String POINTS = POINT.replace("(", "(?:") + "(?:(?:, and |, | and )" + POINT.replace("(", "(?:")
      + ")*";
  private static final Pattern ONE = Pattern.compile(POINT);
  private static final Pattern POINT_IN_HTML = Pattern.compile("<strong>([^<]*)</strong>");
  private static final Pattern TAG = Pattern.compile("<[^>]*>");
  private static final Pattern SENTENCE = Pattern.compile("[^.:;]+");
  private static final Pattern READ = Pattern.compile("\\b[Rr]ead\\b");
  private static final Pattern FORM = Pattern.compile("every pair of (?:(?<points>the points)|(?<all>" + POINTS + "))"
      + "|(?:each of the (?<count>\\w+)|(?<from>" + POINTS + ")),? to (?<to>" + POINT.replace("(", "(?:")
      + "(?:,? and (?:to )?" + POINT.replace("(", "(?:") + "(?! to ))*)");
  private static final List<String> NUMBERS = List.of("zero", "one", "two", "three", "four", "five", "six", "seven",
      "eight", "nine", "ten");

  private ProvedPairs() {}

  /**
   * As the author words them; empty if the words leave out a point.
   *
   * @param words safe HTML
   * @param points those to be proved dead
   */
  public static Optional<List<String>> worded(String words, List<String> points) {
    String marked = TAG.matcher(POINT_IN_HTML.matcher(words).replaceAll("«$1»")).replaceAll(" ");
    Set<String> pairs = new LinkedHashSet<>();
    Matcher sentences = SENTENCE.matcher(marked);
    while (sentences.find()) {
      if (READ.matcher(sentences.group()).find() && !read(sentences.group(), points, pairs)) {
        return Optional.empty();
      }
    }
    Predicate<String> isRead = point -> pairs.stream().flatMap(pair -> List.of(pair.split(" to ")).stream())
        .anyMatch(end -> Names.key(end).equals(Names.key(point)));
    return points.stream().allMatch(isRead) ? Optional.of(List.copyOf(pairs)) : Optional.empty();
  }

  /** Adds a sentence's pairs; false if it counts points that it does not name. */
  private static boolean read(String sentence, List<String> points, Set<String> pairs) {
    Set<String> named = new LinkedHashSet<>();
    for (MatchResult form : FORM.matcher(sentence).results().toList()) {
      Matcher parts = FORM.matcher(form.group());
      parts.matches();
      if (parts.group("points") != null) {
        pairs.addAll(all(points));
      } else if (parts.group("all") != null) {
        pairs.addAll(among(names(parts.group("all"))));
      } else {
        List<String> to = names(parts.group("to"));
        List<String> from = parts.group("from") == null ? List.copyOf(named) : names(parts.group("from"));
        if (parts.group("count") != null && NUMBERS.indexOf(parts.group("count")) != from.size()) {
          return false;
        }
        from.forEach(one -> to.forEach(other -> pairs.add(one + " to " + other)));
        named.addAll(from);
        named.addAll(to);
      }
    }
    return true;
  }

  private static List<String> names(String list) {
    return ONE.matcher(list).results().map(name -> name.group(1)).toList();
  }

  private static List<String> among(List<String> points) {
    var pairs = new ArrayList<String>();
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < points.size(); j++) {
        pairs.add(points.get(i) + " to " + points.get(j));
      }
    }
    return pairs;
  }

  /** Every pair of the points, then each of them to ground, once, whether or not ground is named. */
  public static List<String> all(List<String> points) {
    List<String> legs = points.stream().filter(point -> !Names.key(point).equals(GROUND)).toList();
    var pairs = new ArrayList<>(among(legs));
    legs.forEach(leg -> pairs.add(leg + " to " + GROUND));
    return pairs;
  }
}
