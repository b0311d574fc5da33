package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungbook.proof.report.Proof;

/** A short that has opened the control fuse of the furnace: the repair is the cable and the fuse. */
class RepairedShortTest {

  private static Proof.Repair repair(String replaced) {
    Library library = Example.library("""
        ~~~~markdown
        ---
        title: Fuse
        complaint: Nothing runs.
        system: split-cooling-gas-furnace
        ---

        ## Call for cooling

        ```task
        set: thermostat cooling
        at: thermostat
        ```

        - done: [Board](#board)

        ## Board

        ```check
        look: status light lit
        at: furnace
        ```

        - yes: [Office](#office)
        - no: [Short](#short)

        ## Short

        ```finding
        fault: Y shorted to C in outdoor cable
        ```

        - repair: [New parts](#new-parts)

        ## New parts

        ```task
        replace: %s
        at: furnace
        ```

        - done: [Board again](#board-again)

        ## Board again

        ```check
        look: status light lit
        at: furnace
        ```

        - yes: [Repaired](#repaired)
        - no: [Office](#office)

        ## Repaired

        ```end
        result: repaired and proved
        ```

        ## Office

        ```finding
        refer: the office
        ```
        ~~~~
        """.formatted(replaced));
    return Example.prove(library.tree("example").orElseThrow().tree(), library).proved().orElseThrow().repairs().get(0);
  }

  @Test
  void aNewCableAloneLeavesTheFuseOpen() {
    assertEquals(0, repair("outdoor cable").passed(), 1e-9);
  }

  @Test
  void aNewCableAndAFuseLight() {
    assertEquals(1, repair("outdoor cable, control fuse").passed(), 1e-9);
  }

  @Test
  void aNewFuseOpensAgainWhereTheShortIsStillThere() {
    assertEquals(1, repair("outdoor cable, control fuse").noticed(), 1e-9);
    assertEquals(0, repair("control fuse").passed(), 1e-9);
  }
}
