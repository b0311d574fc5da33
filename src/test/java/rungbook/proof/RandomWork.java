package rungbook.proof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/**
 * Trees of much work on one made-up system, drawn from a seed. Names mean several things there, as they do in the
 * field: {@code A} is a terminal at two places, {@code B} at one, {@code C} a terminal and a part, {@code main} a power
 * switch and a terminal.
 */
final class RandomWork {

  static final Vocabulary WORDS = new Vocabulary("bench", "Bench",
      Map.of("hall", new Location("hall", Optional.of("lid"), false), "attic",
          new Location("attic", Optional.of("hatch"), false),
          "cellar", new Location("cellar", Optional.empty(), false)),
      Map.of("a", point("A", "hall", "attic"), "b", point("B", "attic"), "c", point("C", "hall", "cellar"),
          "main", point("main", "hall", "attic", "cellar")),
      Map.of("lever", new Control("lever", Role.SELECTOR, List.of("off", "on", "auto"), Set.of("hall"), false),
          "fan", new Control("fan", Role.SELECTOR, List.of("auto", "on"), Set.of("hall"), false),
          "main", new Control("main", Role.ISOLATOR, List.of(), Set.of("cellar"), false),
          "branch", new Control("branch", Role.ISOLATOR, List.of(), Set.of("attic"), false),
          "latch", new Control("latch", Role.INTERLOCK, List.of(), Set.of("hall"), false),
          "limit", new Control("limit", Role.INTERLOCK, List.of(), Set.of("attic"), false)),
      Map.of(),
      Map.of("c", new Part("C", "wire"), "run capacitor", new Part("run capacitor", "capacitor"),
          "control fuse", new Part("control fuse", "fuse")),
      Map.of("dead lamp", "dead lamp"), Map.of());

  private static final List<String> PLACES = List.of("hall", "attic", "cellar");
  private static final List<String> SWITCHES = List.of("main", "branch");
  private static final List<String> THINGS = List.of("A", "B", "C", "main", "latch", "run capacitor", "control fuse");
  static final List<String> SETTINGS = List.of("lever off", "lever on", "lever auto", "fan auto", "fan on");
  private static final List<
      String> RESTORABLE = List.of("A", "B", "C", "main", "branch", "latch", "limit", "lid", "hatch", "control fuse");

  private final Random random;
  private final int steps;

  private RandomWork(long seed) {
    this.random = new Random(seed);
    this.steps = 4 + random.nextInt(7);
  }

  static Tree tree(long seed) {
    var shared = new Shared(Map.of("bench", WORDS), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Set.of("work"));
    Source source = new Source("trees/work-" + seed + ".md", new RandomWork(seed).text());
    return TreeReader.read("work", DocumentReader.read(source), shared).tree();
  }

  private static Point point(String name, String... places) {
    return new Point(name, Set.of(places), OptionalDouble.empty());
  }

  private String text() {
    var text = new StringBuilder("---\ntitle: Work\ncomplaint: Any\nsystem: bench\n---\n");
    for (int step = 0; step < steps; step++) {
      text.append("\n## S").append(step).append("\n\n");
      boolean last = step == steps - 1;
      text.append(last ? "```finding\nhealthy: yes\n```\n" : random.nextInt(3) == 0 ? check(step) : task(step));
    }
    return text.toString();
  }

  private String check(int step) {
    String with = random.nextBoolean() ? "with: " + one(SETTINGS) + ", " + one(SETTINGS) + "\n" : "";
    return "```check\nlook: lamp lit\n" + with + place() + "```\n\n- yes: " + way(step) + "- no: " + way(step);
  }

  private String task(int step) {
    String second = random.nextInt(4) == 0 ? "- not done: " + way(step) : "";
    return "```task\n" + actions() + place() + "minutes: 1\n```\n\n- done: " + way(step) + second;
  }

  private String place() {
    return random.nextInt(4) == 0 ? "" : "at: " + one(PLACES) + "\n";
  }

  private String actions() {
    var lines = new StringBuilder();
    line(lines, "isolate", SWITCHES);
    line(lines, "open", List.of("lid", "hatch"));
    line(lines, "bypass", List.of("latch", "limit"));
    line(lines, "prove dead", List.of("A", "B"));
    line(lines, "discharge", List.of("run capacitor"));
    line(lines, "disconnect", THINGS);
    line(lines, "set", SETTINGS);
    line(lines, "replace", THINGS);
    line(lines, "reconnect", THINGS);
    line(lines, "restore", RESTORABLE);
    line(lines, "tag out", SWITCHES);
    line(lines, "close", List.of("lid", "hatch"));
    return lines.toString();
  }

  private void line(StringBuilder lines, String action, List<String> things) {
    if (random.nextInt(3) == 0) {
      lines.append(action).append(": ").append(one(things)).append(", ").append(one(things)).append('\n');
    }
  }

  private String way(int step) {
    int to = step + 1 + random.nextInt(Math.min(3, steps - step - 1));
    return "[S" + to + "](#s" + to + ")\n";
  }

  private String one(List<String> some) {
    return some.get(random.nextInt(some.size()));
  }
}
