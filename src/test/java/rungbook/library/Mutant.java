package rungbook.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rungbook.source.Source;

/** A starter library with one text changed by a few slips of the pen, the same for the same seed. */
final class Mutant {

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
  private static final Pattern NAME = Pattern.compile("(?m)^([A-Za-z][\\w -]*): ");
  private static final String[] FIGURES = {"0", "0.001", "1", "3", "24", "24.65", "120", "599", "600", "999999"};
  private static final String[] EFFECTS = {"open %s", "short %s", "short %s to %s", "raise %s by 5 ohm",
      "raise %s by 999999 ohm",
      "hold %s open", "hold %s closed", "stop %s", "cross %s with %s", "weaken %s 3 times", "tap %s for 208 V",
      "lower %s to 1 to 2 V"};

  private final LibraryText library;
  private final Random random;
  private final String path;

  /** @param path of the text that is changed */
  Mutant(LibraryText library, String path, long seed) {
    this.library = library;
    this.path = path;
    this.random = new Random(seed);
  }

  LibraryText text() {
    String text = library.texts().get(path).text();
    for (int slips = 1 + random.nextInt(3); slips > 0; slips--) {
      text = slip(text);
    }
    var texts = new TreeMap<>(library.texts());
    texts.put(path, new Source(path, text));
    return new LibraryText(texts, library.pictures(), List.of());
  }

  private String slip(String text) {
    return switch (random.nextInt(6)) {
      case 0 -> replaced(text, NUMBER, FIGURES[random.nextInt(FIGURES.length)]);
      case 1 -> leads(text);
      case 2 -> line(text, true);
      case 3 -> line(text, false);
      case 4 -> text.contains("```faults") ? fault(text) : leads(text);
      default -> swapped(text);
    };
  }

  private String leads(String text) {
    String system = library.texts().get("shared/systems/split-cooling-gas-furnace.md").text();
    String points = name(block(system, "points")) + ", " + name(block(system, "points"));
    return replaced(text, Pattern.compile("(?m)^leads: .*$"), "leads: " + points);
  }

  private String fault(String text) {
    String parts = block(text, "parts");
    String points = block(text, "points");
    String form = EFFECTS[random.nextInt(EFFECTS.length)];
    boolean between = form.startsWith("short %s to");
    String effect = String.format(form, name(between ? points : parts), name(between ? points : parts));
    return text.replace("```faults\n", "```faults\nslip " + random.nextInt(1000) + ": " + effect + ", likelihood 1\n");
  }

  private static String block(String text, String kind) {
    int start = text.indexOf("```" + kind + "\n");
    return start < 0 ? "" : text.substring(start, text.indexOf("\n```", start + 4));
  }

  private String name(String block) {
    List<String> names = NAME.matcher(block).results().map(match -> match.group(1)).toList();
    return names.isEmpty() ? "nothing" : names.get(random.nextInt(names.size()));
  }

  private String replaced(String text, Pattern what, String by) {
    List<int[]> places = what.matcher(text).results().map(match -> new int[] {match.start(), match.end()}).toList();
    if (places.isEmpty()) {
      return text;
    }
    int[] place = places.get(random.nextInt(places.size()));
    return text.substring(0, place[0]) + Matcher.quoteReplacement(by) + text.substring(place[1]);
  }

  private String line(String text, boolean twice) {
    var lines = new ArrayList<>(text.lines().toList());
    int at = random.nextInt(lines.size());
    if (twice) {
      lines.add(at, lines.get(at));
    } else {
      lines.remove(at);
    }
    return lines.stream().collect(Collectors.joining("\n", "", "\n"));
  }

  /** Two lines change places what follows their colon: answers lead elsewhere, parts have each other's particulars. */
  private String swapped(String text) {
    var lines = new ArrayList<>(text.lines().toList());
    int a = random.nextInt(lines.size());
    int b = Math.min(lines.size() - 1, a + 1 + random.nextInt(3));
    int colonA = lines.get(a).indexOf(": ");
    int colonB = lines.get(b).indexOf(": ");
    if (colonA < 0 || colonB < 0) {
      return text;
    }
    String first = lines.get(a).substring(0, colonA) + lines.get(b).substring(colonB);
    lines.set(b, lines.get(b).substring(0, colonB) + lines.get(a).substring(colonA));
    lines.set(a, first);
    return lines.stream().collect(Collectors.joining("\n", "", "\n"));
  }
}
