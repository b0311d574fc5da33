package rungbook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rungbook.ladder.Ladder;
import rungbook.ladder.LadderDrawing;
import rungbook.library.Folder;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.solving.SystemReadings;
import rungbook.proof.demand.ReadingRequest;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.tree.Shared;
import rungbook.web.views.CircuitView;
import rungbook.web.views.CircuitViews;

/** One choice in the form of the furnace system's page, from the request to the numbers and both drawings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SystemPageBench {

  private static final String ID = "split-cooling-gas-furnace";
  private static final List<String> LEADS = List.of("Y, C", "T1, T2", "L1, L2", "C, ground", "L1, T1");
  private static final ReadingRequest WHAT_RUNS = new ReadingRequest("", "", "", List.of(), "", "");

  private LibraryText library;
  private Shared shared;
  private Source source;
  private ControlSystem system;
  private SystemReadings readings;
  private int clicks;

  /** What the page does when it is first shown. */
  @Setup
  public void show() throws IOException {
    library = Folder.read(Path.of(""));
    shared = LibraryCompiler.sharedAsNeeded(library);
    source = library.in("shared/systems/").get(ID);
    readings = new SystemReadings();
    system = readings.system(ID, source).orElseThrow().base();
    readings.table(ID, source);
    ladder();
    readings.answer(ID, "", WHAT_RUNS, library, shared);
  }

  private CircuitView.Answered click(String leads, String setting, String fault) {
    var request = new ReadingRequest("", "condenser", leads, List.of(setting), fault, "");
    return CircuitViews.answered(Optional.of(readings.answer(ID, "", request, library, shared)),
        variant -> readings.ladder(ID, source, variant).orElseThrow());
  }

  /** The first of all, as somebody meets it who opens the page after a start of the server. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(5)
  public CircuitView.Answered firstChoice() {
    return click("Y, C", "thermostat cooling", "contactor coil open");
  }

  @Benchmark
  public CircuitView.Answered otherFault() {
    List<Fault> faults = system.faults();
    return click("Y, C", "thermostat cooling", faults.get(clicks++ % faults.size()).name());
  }

  @Benchmark
  public CircuitView.Answered otherLeads() {
    return click(LEADS.get(clicks++ % LEADS.size()), "thermostat cooling", "contactor coil open");
  }

  /** From the parts to both drawings. */
  @Benchmark
  public int ladder() {
    Ladder ladder = Ladder.of(system);
    return LadderDrawing.of(ladder, LadderDrawing.NARROW, Set.of()).length()
        + LadderDrawing.of(ladder, 880, Set.of()).length();
  }
}
