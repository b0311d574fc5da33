package rungbook.library;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Damages a text of the starter library as slips of the pen, bad tools and bad will do. Half of the texts only get
 * slips, most of which still can be proved; the other half also get broken markup. The same seed gives the same text.
 */
final class Mutations {

  private static final List<String> TOKENS = List.of("```", "```\n", "\n```check\n", "\n```exit\n", "---\n",
      "- yes: [On](#on)\n", "- ", "> ", "## ", "## A\n", "[](", "](", "![", "[x][]", "\u202e", "\u200b", "\u0000",
      "\f", "\r", "\r\n", "\t", "\ufeff", "\ud800", "&amp;", "<b>", "<!--", "**", "*", "_", "`", "\\", "|",
      "|---|\n", "#", ": ", ",", "\"", "'", "{", "[", "not ", " and ", " or ", " to ", "-1", "0", "1e9",
      "99999999999999999999", "NaN", "OL", " V", " ohm", "anything else", "under 5", "title:", "exits:",
      "fragment: open-furnace-live\n", "open: ", "system: heat-pump\n", "measure: AC volts\n", "closed when ",
      "likelihood 0");
  private static final List<String> FIGURES = List.of("0", "0.001", "1", "3", "24", "24.65", "120", "599", "600",
      "999999");
  private static final List<String> EFFECTS = List.of("open %s", "short %s", "short %s to %s", "raise %s by 5 ohm",
      "raise %s by 999999 ohm", "hold %s open", "hold %s closed", "stop %s", "cross %s with %s", "weaken %s 3 times",
      "tap %s for 208 V", "lower %s to 1 to 2 V");
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
  private static final Pattern NAME = Pattern.compile("(?m)^([A-Za-z][\\w -]*): ");
  private static final Pattern LEADS = Pattern.compile("(?m)^leads: .*$");
  private static final String SYSTEM = "shared/systems/split-cooling-gas-furnace.md";

  private final Random random;
  private final LibraryText library;
  private String text;

  private Mutations(long seed, String text, LibraryText library) {
    this.random = new Random(seed);
    this.text = text;
    this.library = library;
  }

  /**
   * One of the library's texts, damaged.
   *
   * @param path where the text lies
   */
  static byte[] of(long seed, String path, LibraryText library) {
    Mutations mutations = new Mutations(seed, library.texts().get(path).text(), library);
    if (mutations.random.nextBoolean()) {
      mutations.times(3, mutations::slip);
      return mutations.text.getBytes(StandardCharsets.UTF_8);
    }
    mutations.times(6, mutations::damage);
    return mutations.bytes();
  }

  private void times(int most, Runnable change) {
    for (int left = 1 + random.nextInt(most); left > 0; left--) {
      change.run();
    }
  }

  private void damage() {
    switch (random.nextInt(8)) {
      case 0 -> lines(lines -> Collections.swap(lines, at(lines.size()), at(lines.size())));
      case 1 -> cut();
      case 2 -> insert(any(TOKENS).repeat(1 + random.nextInt(3)));
      case 3 -> insert(any(TOKENS).repeat(1 + random.nextInt(random.nextInt(20) == 0 ? 5_000 : 20)));
      case 4 -> insert(piece());
      case 5 -> lines(lines -> lines.set(at(lines.size()), any(TOKENS) + lines.get(at(lines.size()))));
      default -> slip();
    }
  }

  private void slip() {
    switch (random.nextInt(6)) {
      case 0 -> replace(NUMBER, any(FIGURES));
      case 1 -> replace(LEADS, "leads: " + point() + ", " + point());
      case 2 -> lines(lines -> lines.add(at(lines.size()), lines.get(at(lines.size()))));
      case 3 -> lines(lines -> lines.remove(at(lines.size())));
      case 4 -> addFault();
      default -> lines(this::swapValues);
    }
  }

  private String point() {
    return name(block(library.texts().get(SYSTEM).text(), "points"));
  }

  private void addFault() {
    String form = any(EFFECTS);
    String block = block(text, form.startsWith("short %s to") ? "points" : "parts");
    String effect = String.format(form, name(block), name(block));
    text = text.replace("```faults\n", "```faults\nslip " + random.nextInt(1000) + ": " + effect + ", likelihood 1\n");
  }

  private static String block(String text, String kind) {
    int start = text.indexOf("```" + kind + "\n");
    int end = text.indexOf("\n```", start + 4);
    return start < 0 || end < 0 ? "" : text.substring(start, end);
  }

  private String name(String block) {
    List<String> names = NAME.matcher(block).results().map(match -> match.group(1)).toList();
    return names.isEmpty() ? "nothing" : any(names);
  }

  private void replace(Pattern what, String by) {
    List<MatchResult> places = what.matcher(text).results().toList();
    if (!places.isEmpty()) {
      MatchResult place = any(places);
      text = text.substring(0, place.start()) + by + text.substring(place.end());
    }
  }

  /** Two lines swap what follows their colons: answers lead elsewhere, parts have each other's particulars. */
  private void swapValues(List<String> lines) {
    int first = at(lines.size());
    int second = Math.min(lines.size() - 1, first + 1 + random.nextInt(3));
    String[] one = lines.get(first).split(": ", 2);
    String[] other = lines.get(second).split(": ", 2);
    if (one.length == 2 && other.length == 2) {
      lines.set(first, one[0] + ": " + other[1]);
      lines.set(second, other[0] + ": " + one[1]);
    }
  }

  private void lines(Consumer<List<String>> change) {
    var lines = new ArrayList<>(List.of(text.split("\n", -1)));
    change.accept(lines);
    text = String.join("\n", lines);
  }

  private void cut() {
    int from = at(text.length() + 1);
    text = text.substring(0, from) + text.substring(Math.min(text.length(), from + random.nextInt(40)));
  }

  private void insert(String words) {
    int place = at(text.length() + 1);
    text = text.substring(0, place) + words + text.substring(place);
  }

  /** Of any text of the library. */
  private String piece() {
    String donor = any(List.copyOf(library.texts().values())).text();
    int from = at(donor.length() + 1);
    return donor.substring(from, Math.min(donor.length(), from + random.nextInt(600)));
  }

  private <T> T any(List<T> of) {
    return of.get(at(of.size()));
  }

  private int at(int size) {
    return random.nextInt(Math.max(1, size));
  }

  private byte[] bytes() {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > 0 && random.nextInt(25) == 0) {
      bytes[at(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
