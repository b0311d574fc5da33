package rungbook.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.solving.SystemReadings.Outcome;
import rungbook.library.solving.SystemReadings;
import rungbook.proof.demand.ReadingRequest;
import rungbook.report.demand.ReadingJson;
import rungbook.report.demand.ReadingText;
import rungbook.source.Problem;
import rungbook.source.Wording;

@Command(name = "read", description = "Say what a meter shows between two points of a system, and what runs",
    footer = {"", "exit code: 0 answered, 1 the system has no circuit, 2 misuse"})
final class ReadCommand implements Callable<Integer> {

  private final Console terminal;

  @Parameters(paramLabel = "SYSTEM", description = "a system's file, or its name in the library of this folder")
  private String system;

  @Option(names = "--at", paramLabel = "PLACE", defaultValue = "", description = "where the leads are")
  private String at;

  @Option(names = "--leads", paramLabel = "RED,BLACK", defaultValue = "",
      description = "the points of the leads; one point for a clamp; none to see only what runs")
  private String leads;

  @Option(names = "--set", paramLabel = "SETTING",
      description = "a control and its position, such as `thermostat cooling` or `door switch bypassed`; repeatable")
  private List<String> settings = List.of();

  @Option(names = "--fault", paramLabel = "FAULT", defaultValue = "", description = "one of the system's faults")
  private String fault;

  @Option(names = "--variant", paramLabel = "VARIANT", defaultValue = "", description = "one of the system's variants")
  private String variant;

  @Option(names = "--quantity", paramLabel = "QUANTITY", defaultValue = "",
      description = "what the meter measures (default: AC volts)")
  private String quantity;

  @Option(names = "--meter", paramLabel = "METER", defaultValue = "",
      description = "a meter of the library (default: the usual one)")
  private String meter;

  @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text",
      description = "text for people (the default), json for programs")
  private String format;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  ReadCommand(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Format wanted = Format.named(format);
    if (wanted == Format.SARIF) {
      throw new UsageError("a reading is no problem, so there is no sarif of it", "write text or json");
    }
    InputFiles.InLibrary named = InputFiles.system(system, terminal);
    LibraryText text = named.library();
    Outcome outcome = new SystemReadings().answer(named.id(), meter, request(), text,
        LibraryCompiler.sharedAsNeeded(text));
    if (outcome instanceof Outcome.Refused refused) {
      throw misuse(refused.problems().get(0));
    }
    if (outcome instanceof Outcome.Unsolvable unsolvable) {
      terminal.err().println("rungbook: " + unsolvable.why());
      return 1;
    }
    var answer = ((Outcome.Answered) outcome).answer();
    terminal.out().print(wanted == Format.JSON ? ReadingJson.of(answer) : ReadingText.of(answer));
    return 0;
  }

  private ReadingRequest request() {
    return new ReadingRequest(variant, at, leads, settings, fault, quantity);
  }

  private static UsageError misuse(Problem problem) {
    Wording wording = Wording.of(problem);
    String field = problem.source().name();
    return new UsageError((field.equals("system") ? "" : "--" + field + ": ") + wording.sentence(problem),
        wording.hint(problem));
  }
}
