package rungbook.pack.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.pack.Samples;
import rungbook.pack.page.TerminalStrip.Cell;
import rungbook.tree.Step;
import rungbook.tree.Tree;

class TerminalStripTest {

  @Test
  void everyStarterStripHoldsItsLeadsAndFits() {
    for (var compiled : Samples.STARTER.trees()) {
      Tree tree = compiled.tree();
      tree.steps().stream().filter(Step.MeterCheck.class::isInstance).map(Step.MeterCheck.class::cast)
          .filter(check -> !check.leads().isEmpty()).forEach(check -> {
            TerminalStrip strip = TerminalStrip.of(check.leads(), check, tree.system());
            List<Integer> leads = strip.cells().stream().map(Cell::lead).filter(lead -> lead >= 0).sorted().toList();
            assertEquals(check.leads().size() == 2 ? List.of(0, 1) : List.of(0), leads, check.id());
            assertTrue(strip.width() <= TerminalStrip.WIDTH, check.id() + " is " + strip.width() + " wide");
          });
    }
  }

  @Test
  void longestNamesAreDrawnNarrowerAndStayInside() {
    Tree tree = Samples.tree("""
        ---
        title: Sample
        complaint: Nothing yet
        ---

        ## Long names

        ```check
        measure: AC volts
        leads: superheterodynetransformer, <b>
        expect: 24 to 28 V
        ```
        """);
    var check = (Step.MeterCheck) tree.steps().get(0);
    TerminalStrip strip = TerminalStrip.of(check.leads(), check, tree.system());
    assertTrue(strip.width() <= TerminalStrip.WIDTH);
    String drawing = StripDrawing.of(strip, "words", "AC volts");
    assertTrue(drawing.contains("textLength=\"134\"") && drawing.contains(">&lt;b&gt;</text>"), drawing);
  }

  @Test
  void lettersStandInTheSystemsOrderWithTheirNeighbors() {
    Tree tree = Samples.STARTER.tree("no-cooling-blower-runs").orElseThrow().tree();
    var check = (Step.MeterCheck) tree.steps().stream().filter(step -> step instanceof Step.MeterCheck meter
        && meter.leads().stream().map(lead -> lead.text()).toList().equals(List.of("Y", "C"))).findFirst()
        .orElseThrow();
    List<Cell> cells = TerminalStrip.of(check.leads(), check, tree.system()).cells();
    assertTrue(cells.indexOf(new Cell("C", 1)) < cells.indexOf(new Cell("Y", 0)) && cells.size() > 2, cells.toString());
  }
}
