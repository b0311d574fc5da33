package rungbook.rules.flow;

import java.util.List;
import java.util.Random;
import rungbook.source.Source;
import rungbook.tree.SingleTree;
import rungbook.tree.Tree;

/** Small trees drawn from a seed: tasks, checks and findings, whose ways lead on to later steps, or anywhere. */
final class RandomTrees {

  private static final List<String> SWITCHES = List.of("breaker", "disconnect");
  private static final List<String> INTERLOCKS = List.of("door switch", "limit");
  private static final List<String> PARTS = List.of("igniter", "run capacitor", "control fuse");
  private static final List<String> POSITIONS = List.of("cooling", "heating", "off");

  private final Random random;
  private final int steps;
  private final boolean circles;

  private RandomTrees(long seed, boolean circles) {
    this.random = new Random(seed);
    this.steps = 3 + random.nextInt(7);
    this.circles = circles;
  }

  /** @param circles whether a way may lead back */
  static Tree tree(long seed, boolean circles) {
    String text = new RandomTrees(seed, circles).text();
    return SingleTree.read(new Source("trees/random-" + seed + ".md", text)).tree();
  }

  private String text() {
    var text = new StringBuilder("---\ntitle: Random\ncomplaint: Any\n---\n");
    for (int step = 0; step < steps; step++) {
      text.append("\n## S").append(step).append("\n\n");
      boolean end = step == steps - 1 || random.nextInt(6) == 0 && step > 1;
      boolean goesOn = !end && random.nextInt(5) == 0;
      text.append(end ? finding() : goesOn ? finding() + "\n- repair: " + way(step)
          : random.nextBoolean() ? task(step) : check(step));
    }
    return text.toString();
  }

  private String finding() {
    return "```finding\nfault: something\n" + deeds() + "```\n";
  }

  private String task(int step) {
    return "```task\n" + deeds() + "minutes: 1\n```\n\n- done: " + way(step)
        + (random.nextBoolean() ? "- not dead: " + way(step) : "");
  }

  private String check(int step) {
    String with = random.nextInt(3) == 0 ? "with: thermostat " + one(POSITIONS) + "\n" : "";
    if (random.nextBoolean()) {
      return "```check\nlook: " + one(List.of("light lit", "blower running")) + "\n" + with + "```\n\n- yes: "
          + way(step) + "- no: " + way(step);
    }
    int cut = 10 * (1 + random.nextInt(3));
    return "```check\nmeasure: " + one(List.of("AC volts", "ohms", "microfarads")) + "\nleads: "
        + one(List.of("R, C", "C, R", "Y, C"))
        + "\nexpect: " + cut + " or more\n" + with + "```\n\n- " + cut + " or more: " + way(step) + "- 5 to " + cut
        + ": " + way(step) + "- under 5: "
        + way(step);
  }

  private String deeds() {
    var lines = new StringBuilder();
    line(lines, "isolate", SWITCHES);
    line(lines, "try", SWITCHES);
    line(lines, "open", List.of("door"));
    line(lines, "bypass", INTERLOCKS);
    line(lines, "prove dead", List.of("L1"));
    line(lines, "known source", List.of("outlet"));
    line(lines, "discharge", List.of("run capacitor"));
    line(lines, "disconnect", PARTS);
    line(lines, "replace", PARTS);
    line(lines, "repair", PARTS);
    line(lines, "reconnect", PARTS);
    line(lines, "set", List.of("thermostat cooling", "thermostat heating", "thermostat off"));
    line(lines, "restore", List.of("breaker", "disconnect", "door switch", "limit", "igniter", "door"));
    line(lines, "tag out", SWITCHES);
    return lines.toString();
  }

  private void line(StringBuilder lines, String verb, List<String> things) {
    if (random.nextInt(6) == 0) {
      String first = one(things);
      String second = one(things);
      lines.append(verb).append(": ").append(first.equals(second) ? first : first + ", " + second).append('\n');
    }
  }

  private String way(int step) {
    int to = circles && random.nextInt(3) == 0 ? random.nextInt(steps)
        : step + 1 + random.nextInt(Math.min(3, steps - step - 1));
    return "[S" + to + "](#s" + to + ")\n";
  }

  private String one(List<String> some) {
    return some.get(random.nextInt(some.size()));
  }
}
