package rungbook.pack.drawing;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import rungbook.system.Names;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/** The words beside terminals: as the system writes them, without the words that the title already has. */
final class Labels {

  private final Vocabulary words;

  Labels(Vocabulary words) {
    this.words = words;
  }

  /** Each terminal's label. If shortening made two on one side of the poles or in the row the same, all are whole. */
  Map<Terminal, String> of(Subject subject) {
    Map<Terminal, String> labels = new LinkedHashMap<>();
    subject.terminals().forEach(terminal -> labels.put(terminal, shortened(terminal, subject)));
    if (!areDifferent(labels.entrySet(), subject)) {
      labels.replaceAll((terminal, label) -> name(terminal));
    }
    return labels;
  }

  private static boolean areDifferent(Set<Map.Entry<Terminal, String>> labels, Subject subject) {
    Set<String> seen = new HashSet<>();
    return labels.stream().allMatch(label -> seen.add(label.getValue()
        + (subject instanceof Subject.Poles && subject.fed().contains(label.getKey()) ? " above" : "")));
  }

  String name(Terminal terminal) {
    return words.pointName(terminal.point());
  }

  /** {@code in} for {@code limit in} of the limit. */
  private String shortened(Terminal terminal, Subject subject) {
    List<String> title = List.of(Names.key(subject.title()).split(" ", -1));
    String label = name(terminal);
    for (int space = label.indexOf(' '); space > 0
        && title.contains(label.substring(0, space).toLowerCase(Locale.ROOT)); space = label.indexOf(' ')) {
      label = label.substring(space + 1);
    }
    return label;
  }

  boolean isNamedAfter(Terminal terminal, Subject subject) {
    return !shortened(terminal, subject).equals(name(terminal));
  }
}
