package rungbook.library;

import rungbook.proof.report.Proof;

/** A lamp behind two wires, with a bell beside it, and a tree whose shares can be worked out by hand. */
final class BenchProofs {

  private static final String SYSTEM = """
      `shared/systems/lamp-bench.md`

      ~~~~markdown
      ---
      title: Lamp bench
      ---

      ```locations
      bench: start
      ```

      ```points
      R: at bench
      A: at bench
      B: at bench
      C: at bench
      ground: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, R to C
      bond: joint, C to ground
      wire one: wire, R to A
      wire two: wire, A to B
      lamp: load, 24 V, 5 W, B to C
      bell contact: contact, R to inside bell, closed when call on
      bell: load, 24 V, 5 W, inside bell to C
      ```

      ```sights
      lamp lit: at bench, when lamp on
      ```

      ```faults
      wire one open: open wire one, likelihood 2
      wire two open: open wire two, likelihood 1
      lamp open: open lamp, likelihood 4%s
      bell open: open bell, likelihood 1%s
      supply low: lower supply to 14 V, likelihood 1
      ```
      ~~~~

      """;

  private static final String TREE = """
      `trees/example.md`

      ~~~~markdown
      ---
      title: Lamp dark
      complaint: The lamp is dark.
      system: lamp-bench
      not seen: lamp lit
      ---

      ## Look

      ```check
      look: lamp lit
      at: bench
      ```

      - yes: [Nothing wrong](#nothing-wrong)
      - no: [A to C](#a-to-c)

      ## A to C

      ```check
      measure: AC volts
      leads: A, C
      at: bench
      expect: 20 to 30 V
      ```

      - 20 or more: [B to C](#b-to-c)
      - under 20: [Wire one](#wire-one)

      ## B to C

      ```check
      measure: AC volts
      leads: B, C
      at: bench
      expect: 20 to 30 V
      ```

      - 20 or more: [%s](#%s)
      - under 20: [Wire two](#wire-two)

      ## Look again

      ```check
      look: lamp lit
      at: bench
      again: yes
      ```

      - no: [Lamp](#lamp)
      - yes: [Comes and goes](#comes-and-goes)

      ## Lamp

      ```finding
      fault: lamp open
      ```

      ## Wire one

      ```finding
      fault: wire one open
      ```

      ## Wire two

      ```finding
      fault: wire two open
      ```

      ## Comes and goes

      ```finding
      refer: a senior technician
      ```

      ## Nothing wrong

      ```finding
      healthy: yes
      ```
      ~~~~
      """;

  private BenchProofs() {}

  /**
   * @param lamp more of the line of its fault
   * @param bell more of the line of its fault
   */
  static Library library(boolean looksAgain, String lamp, String bell) {
    return Example.library(SYSTEM.formatted(lamp, bell)
        + (looksAgain ? TREE.formatted("Look again", "look-again") : TREE.formatted("Lamp", "lamp")));
  }

  /** The same with a supply and a loose wire that differ from house to house, and without the fault of the supply. */
  static Library spread() {
    String spread = SYSTEM.formatted("", "").replace("supply, 24 V, 0.05", "supply, 24 V, from 19 to 27 V, 0.05")
        .replace("supply low: lower supply to 14 V", "wire one loose: raise wire one by 150 to 300 ohm");
    return Example.library(spread + TREE.formatted("Lamp", "lamp"));
  }

  static Proof proof(Library library) {
    return Example.PROVER.prove(library.tree("example").orElseThrow().tree(), library.text(),
        id -> library.tree(id).map(CompiledTree::tree)).proved().orElseThrow();
  }
}
