package rungbook.web.service;

import java.util.List;

/**
 * A tree whose proof takes minutes: ten conductors of the furnace system, each connected or not where a reading is
 * taken, make 1,024 states with 60 faults.
 */
public final class LargeTree {
  public static final String TEXT = text();

  private LargeTree() {}

  private static String text() {
    var tree = new StringBuilder("---\ntitle: Large\ncomplaint: C\nsystem: split-cooling-gas-furnace\n---\n\n");
    var number = 0;
    for (var place : List.of("thermostat", "furnace")) {
      for (var conductor : List.of("R", "C", "Y", "W", "G")) {
        tree.append("## Ask %1$d\n\n```check\nsmell: gas\nat: %2$s\n```\n\n- yes: [Do %1$d](#do-%1$d)\n"
            .formatted(number, place));
        tree.append("- no: [Ask %2$d](#ask-%2$d)\n\n".formatted(number, number + 1));
        tree.append("## Do %d\n\n```task\ndisconnect: %s\nat: %s\n```\n\n- done: [Ask %4$d](#ask-%4$d)\n\n"
            .formatted(number, conductor, place, number + 1));
        number++;
      }
    }
    return tree.append("## Ask 10\n\n```check\nmeasure: AC volts\nleads: Y, C\nat: furnace\n```\n\n"
        + "- under 20: [End](#end)\n- 20 or more: [End](#end)\n\n## End\n\n```finding\nhealthy: yes\n```\n").toString();
  }
}
