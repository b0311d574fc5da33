package rungbook.library;

/** A lamp behind two fuses; in a fifth of the houses the second fuse is in the return, and shows elsewhere. */
public final class TwoFuses {

  public static final String SYSTEM_PATH = "shared/systems/lamp.md";
  public static final String TREE_PATH = "trees/dark.md";

  public static final String SYSTEM = """
      ---
      title: Lamp
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 120 V
      N: at bench
      A: at bench
      B: at bench
      D: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, from 114 to 126 V, 0.05 ohm, L1 to N
      first fuse: fuse, 5 A, L1 to A
      second fuse: fuse, 5 A, A to B
      call contact: contact, B to D, closed when call on
      lamp: load, 120 V, 60 W, D to N
      ```

      ```sights
      lit: at bench, when lamp on
      fuse in the return: at bench, when variant fuse in the return
      ```

      ```faults
      first fuse open: open first fuse
      second fuse open: open second fuse
      lamp open: open lamp
      ```

      ```variants
      fuse in the return: share 20 %, about the second fuse is behind the lamp
      ```

      ```variant fuse in the return
      call contact: contact, A to D, closed when call on
      lamp: load, 120 V, 60 W, D to B
      second fuse: fuse, 5 A, B to N
      ```
      """;

  private static final String TREE = """
      ---
      title: Dark
      complaint: The lamp is dark.
      system: lamp
      %s---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [%s)

      ## Place

      ```check
      look: fuse in the return
      at: bench
      ```

      - yes: [Second fuse](#second-fuse)
      - no: [Read D](#read-d)

      ## Read D

      ```check
      measure: AC volts
      leads: D, N
      at: bench
      expect: 110 to 130 V
      ```

      - under 60: [Fuses](#fuses)
      - 60 or more: [Lamp](#lamp)

      ## Fuses

      ```finding
      fault: first fuse open, second fuse open
      ```

      ## Lamp

      ```finding
      fault: lamp open
      ```

      ## Second fuse

      ```finding
      refer: an electrician
      ```
      """;

  /** Looks whether the lamp is lit: has no problem, and finds every fault. */
  public static final String LOOKING_TREE = """
      ---
      title: Dark
      complaint: The lamp is dark.
      system: lamp
      ---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [Light](#light)

      ## Light

      ```check
      look: lit
      at: bench
      ```

      - yes: [No fault](#no-fault)
      - no: [No light](#no-light)

      ## No fault

      ```task
      set: call off
      at: bench
      ```

      - done: [Good](#good)

      ## No light

      ```task
      set: call off
      at: bench
      ```

      - done: [Bad](#bad)

      ## Good

      ```finding
      healthy: yes
      ```

      ## Bad

      ```finding
      fault: first fuse open, second fuse open, lamp open
      refer: an electrician
      ```
      """;

  private TwoFuses() {}

  /** Reads the lamp's voltage and never asks which variant it is: wrong where the fuse is in the return. */
  public static String tree() {
    return tree("", "Read D](#read-d");
  }

  /**
   * @param front more lines of the front matter
   * @param first the way from the first step on, {@code Title](#place}
   */
  public static String tree(String front, String first) {
    return TREE.formatted(front, first);
  }
}
