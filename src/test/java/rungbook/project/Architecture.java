package rungbook.project;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The rooms and packages of the program and what each depends on.
 *
 * @param rooms by room, the rooms it depends on
 * @param packages by package, the packages of its own room that it depends on
 */
record Architecture(Map<String, Set<String>> rooms, Map<String, Set<String>> packages) {

  private static final Pattern FIRST_SENTENCE = Pattern.compile("/\\*\\*(.*?\\.)(?:\\s|\\*/)", Pattern.DOTALL);

  static Architecture of(JavaClasses program) {
    Map<String, Set<String>> rooms = new TreeMap<>();
    Map<String, Set<String>> packages = new TreeMap<>();
    for (JavaClass type : program) {
      String room = room(type.getPackageName());
      rooms.computeIfAbsent(room, name -> new TreeSet<>());
      packages.computeIfAbsent(type.getPackageName(), name -> new TreeSet<>());
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String other = dependency.getTargetClass().getPackageName();
        if (other.startsWith("rungbook.") && !room(other).equals(room)) {
          rooms.get(room).add(room(other));
        } else if (other.startsWith("rungbook.") && !other.equals(type.getPackageName())) {
          packages.get(type.getPackageName()).add(other);
        }
      }
    }
    return new Architecture(rooms, packages);
  }

  private static String room(String packageName) {
    return packageName.split("\\.")[1];
  }

  /** A Mermaid flowchart of the rooms, then a table of the packages; a room stands below all that it depends on. */
  String text() {
    var text = new StringBuilder("```mermaid\nflowchart TD\n");
    List<String> ordered = rooms.keySet().stream().sorted(Comparator.comparing(this::depth).thenComparing(room -> room))
        .toList();
    for (String room : ordered) {
      text.append("  ").append(room).append('\n');
      direct(room).forEach(below -> text.append("  ").append(below).append(" --> ").append(room).append('\n'));
    }
    text.append("```\n\n| package | what it does | uses, in its room |\n|---|---|---|\n");
    for (String room : ordered) {
      packages.keySet().stream().filter(name -> room(name).equals(room)).forEach(name -> text.append(row(name)));
    }
    return text.toString();
  }

  private String row(String name) {
    String uses = packages.get(name).stream().map(Architecture::shortName).collect(Collectors.joining(", "));
    return "| `" + shortName(name) + "` | " + summary(name) + " | " + uses + " |\n";
  }

  private static String shortName(String packageName) {
    return packageName.substring("rungbook.".length());
  }

  /** How many rooms lie one behind another before it. */
  private int depth(String room) {
    return rooms.get(room).stream().mapToInt(below -> depth(below) + 1).max().orElse(0);
  }

  /** The rooms it depends on without those that another of them depends on (the transitive reduction). */
  private List<String> direct(String room) {
    return rooms.get(room).stream()
        .filter(below -> rooms.get(room).stream().noneMatch(other -> !other.equals(below) && reaches(other, below)))
        .toList();
  }

  private boolean reaches(String from, String to) {
    return rooms.get(from).stream().anyMatch(next -> next.equals(to) || reaches(next, to));
  }

  private static String summary(String packageName) {
    try {
      String source = Files.readString(Path.of("src/main/java", packageName.replace('.', '/'), "package-info.java"));
      Matcher first = FIRST_SENTENCE.matcher(source);
      String sentence = first.find() ? first.group(1) : "";
      return sentence.replaceAll("\\s+\\*?\\s*", " ").replaceAll("\\{@\\w+ (?:[\\w.]*\\.)?([^}]+)}", "`$1`").strip()
          .replaceAll("\\.$", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
