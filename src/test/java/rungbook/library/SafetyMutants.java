package rungbook.library;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Every change of one text of a library that a careless author may make and that may hurt somebody, one at a time. */
final class SafetyMutants {

  /** What is changed. */
  enum Kind {
    ISOLATE_REMOVED("isolate"), TRY_REMOVED("try"), RESTORE_REMOVED("restore"), CAUTION_REMOVED("cautions"),
    POINT_NOT_PROVED_DEAD("prove dead"), OTHER_TASK_LINE_REMOVED(""), ANSWERS_SWAPPED(""), ANSWER_SENT_TO_HEALTHY("");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * One change.
   *
   * @param line the number of the changed line, from 1
   * @param was that line before
   * @param item what the change takes out of the line; empty if it takes the line, or sends it elsewhere
   * @param text the whole changed file
   */
  record Mutant(Kind kind, String path, int line, String was, String item, String text) {}

  private static final List<String> OTHER_TASK_LINES = List.of("open", "close", "bypass", "set", "discharge",
      "disconnect", "reconnect", "replace", "repair", "tag out", "known source");
  private static final Pattern WAY = Pattern.compile("- .*: \\[.*]\\((.*)\\)");
  private static final Pattern HEALTHY = Pattern
      .compile("(?m)^## (.*)\\n(?:(?!^## )[^\\n]*\\n)*?```finding\\nhealthy: yes$");

  private final String path;
  private final String[] lines;
  private final String text;
  private final List<Mutant> mutants = new ArrayList<>();

  private SafetyMutants(String path, String text) {
    this.path = path;
    this.text = text;
    this.lines = text.split("\n", -1);
  }

  static List<Mutant> of(String path, String text) {
    var all = new SafetyMutants(path, text);
    all.removals();
    all.answers();
    return all.mutants;
  }

  private void removals() {
    String block = "";
    for (int line = 0; line < lines.length; line++) {
      if (lines[line].startsWith("```")) {
        block = lines[line].substring(3);
      } else if (!block.isEmpty()) {
        remove(block, line);
      }
    }
  }

  private void remove(String block, int line) {
    String key = lines[line].contains(":") ? lines[line].substring(0, lines[line].indexOf(':')) : "";
    for (Kind kind : Kind.values()) {
      if (!kind.key.isEmpty() && kind.key.equals(key)) {
        removeItems(kind, line);
      }
    }
    if (OTHER_TASK_LINES.contains(key) && !block.equals("check")) {
      add(Kind.OTHER_TASK_LINE_REMOVED, line, "", Map.of());
    }
  }

  private void removeItems(Kind kind, int line) {
    int colon = lines[line].indexOf(':');
    List<String> items = List.of(lines[line].substring(colon + 1).strip().split(", *"));
    for (int item = 0; item < items.size(); item++) {
      List<String> left = new ArrayList<>(items);
      left.remove(item);
      add(kind, line, items.get(item), left.isEmpty() ? Map.of()
          : Map.of(line, lines[line].substring(0, colon) + ": " + String.join(", ", left)));
    }
  }

  private void answers() {
    Matcher healthy = HEALTHY.matcher(text);
    String slug = healthy.find() ? "#" + healthy.group(1).toLowerCase(Locale.ROOT).replace(' ', '-')
        .replaceAll("[^a-z0-9-]", "") : "";
    for (int line = 0; line < lines.length; line++) {
      Matcher way = WAY.matcher(lines[line]);
      if (way.matches()) {
        Matcher next = WAY.matcher(line + 1 < lines.length ? lines[line + 1] : "");
        if (next.matches() && !next.group(1).equals(way.group(1))) {
          add(Kind.ANSWERS_SWAPPED, line, "",
              Map.of(line, to(line, next.group(1)), line + 1, to(line + 1, way.group(1))));
        }
        if (!slug.isEmpty() && !way.group(1).equals(slug)) {
          add(Kind.ANSWER_SENT_TO_HEALTHY, line, "", Map.of(line, to(line, slug)));
        }
      }
    }
  }

  private String to(int line, String target) {
    return lines[line].substring(0, lines[line].lastIndexOf('(') + 1) + target + ")";
  }

  /** @param changed the new lines, by number; the line itself is left out if it is not among them */
  private void add(Kind kind, int line, String item, Map<Integer, String> changed) {
    List<String> whole = new ArrayList<>(Arrays.asList(lines));
    changed.forEach(whole::set);
    if (!changed.containsKey(line)) {
      whole.remove(line);
    }
    mutants.add(new Mutant(kind, path, line + 1, lines[line], item, String.join("\n", whole)));
  }
}
