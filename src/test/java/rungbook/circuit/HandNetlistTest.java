package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;

/**
 * Netlists for ngspice that were written by hand from the system text in their comments, the meter drawn in: an error
 * in the netlists that this project writes for itself cannot hide here. {@code *read METER RED BLACK = NODE NODE} says
 * what is compared. {@code *then CONTROL to POSITION} sets a control of a {@code *control} line, {@code *then wait
 * SECONDS} waits, and {@code *then reset PART} presses a reset button, one after the other.
 * With {@code *fault} and {@code *second}, two faults are in the circuit at once.
 */
class HandNetlistTest {

  private static final Path FOLDER = Path.of("src/test/resources/netlists");
  private static final double RELATIVE = 1e-6;
  private static final Pattern RESULT = Pattern.compile("reading = ([-+.e\\d]+)");

  static List<Path> netlists() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("netlists")
  void agrees(Path file) throws Exception {
    List<String> lines = Files.readAllLines(file);
    String[] read = only(lines, "*read ").split(" ");
    String fault = effect(lines, "fault");
    String second = effect(lines, "second");
    String[] parts = lines.stream().filter(line -> line.startsWith("*part ")).map(line -> line.substring(6))
        .toArray(String[]::new);
    Trial trial = Trial.controlled(Draw.MIDDLE, only(lines, "*points "), control(lines), "", fault + "\n" + second,
        parts);
    CircuitState state = trial.start();
    for (String step : steps(lines)) {
      state = after(state, step);
    }
    String given = fault.isEmpty() ? "healthy" : second.isEmpty() ? "fault" : "fault and second";
    double ours = trial.in(state).read(given, MeterFunction.valueOf(read[0]), read[1], read[2]);
    double theirs = ngspice(lines, read[4], read[5]);
    assertEquals(theirs, ours, RELATIVE * theirs, lines.get(0));
  }

  private static String control(List<String> lines) {
    return lines.stream().filter(line -> line.startsWith("*control ")).map(line -> line.substring(9) + "\n")
        .collect(Collectors.joining());
  }

  private static List<String> steps(List<String> lines) {
    return lines.stream().filter(line -> line.startsWith("*then ")).map(line -> line.substring(6)).toList();
  }

  private static CircuitState after(CircuitState state, String step) {
    if (step.startsWith("wait ")) {
      return state.waited(Integer.parseInt(step.substring(5)));
    }
    if (step.startsWith("reset ")) {
      return state.replace(step.substring(6)).from(state, Set.of(step.substring(6)));
    }
    String[] set = step.split(" to ", 2);
    return state.set(set[0], set[1]).from(state, Set.of());
  }

  /** A line of the faults; empty if the netlist has none of this name. */
  static String effect(List<String> lines, String name) {
    return lines.stream().filter(line -> line.startsWith("*" + name + " "))
        .map(line -> name + ": " + line.substring(name.length() + 2)).findFirst().orElse("");
  }

  static String only(List<String> lines, String start) {
    return lines.stream().filter(line -> line.startsWith(start)).map(line -> line.substring(start.length())).findFirst()
        .orElseThrow();
  }

  static double ngspice(List<String> lines, String red, String black) throws IOException, InterruptedException {
    String between = "v(" + red + ")" + (black.equals("0") ? "" : "-v(" + black + ")");
    String control = ".options noopac gmin=0\n.control\nset numdgt=15\nac lin 1 60 60\nlet reading=mag(" + between
        + ")\nprint reading\nquit\n.endc\n.end\n";
    Path deck = Files.createTempFile("netlist", ".cir");
    Path log = Files.createTempFile("netlist", ".log");
    try {
      Files.writeString(deck, String.join("\n", lines.subList(0, lines.size() - 1)) + "\n" + control);
      new ProcessBuilder("ngspice", "-b", deck.toString()).redirectErrorStream(true).redirectOutput(log.toFile())
          .start().waitFor();
      Matcher result = RESULT.matcher(Files.readString(log));
      if (!result.find()) {
        throw new IOException("ngspice gave no reading: " + Files.readString(log));
      }
      return Double.parseDouble(result.group(1));
    } finally {
      Files.delete(deck);
      Files.delete(log);
    }
  }
}
