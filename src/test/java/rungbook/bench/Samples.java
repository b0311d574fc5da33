package rungbook.bench;

/** Trees of any size for benchmarks: sound ones, shaped and worded like the starter library's. */
public final class Samples {

  private Samples() {}

  /**
   * A tree whose checks go on to the next check when the reading is good and to a finding of their own when it is not.
   *
   * @param steps checks and findings together, at least 2
   */
  public static String tree(int steps) {
    var text = new StringBuilder("""
        ---
        title: A chain of checks
        complaint: The house is warm and nothing runs.
        ---

        Go from the thermostat to the furnace board and follow the circuit back.

        """);
    int checks = steps / 2;
    for (int i = 1; i <= checks; i++) {
      check(text, i, i < checks ? "Terminal " + (i + 1) : "Nothing wrong");
      if (i < checks || steps % 2 == 1) {
        finding(text, "Part " + i + " is open", "fault: part " + i + " open\nrefer: a senior technician");
      }
    }
    if (steps % 2 == 0) {
      finding(text, "Part " + checks + " is open", "fault: part " + checks + " open\nrefer: a senior technician");
    }
    finding(text, "Nothing wrong", "healthy: yes");
    return text.toString();
  }

  private static void check(StringBuilder text, int i, String next) {
    text.append(
        """
            ## Terminal %d

            ```check
            measure: AC volts
            leads: T%d, C
            expect: 24 to 28 V
            minutes: 1
            ```

            Red lead on terminal **%d**, black lead on **C**. Hold both probes still until the display is steady, and read it
            with the panel open and the door switch held in. A reading that wanders tells of a loose splice.

            - 24 to 28: [%s](#%s)
            - under 24: [Part %d is open](#part-%d-is-open)
            - over 28: [Part %d is open](#part-%d-is-open)

            """
            .formatted(i, i, i, next, next.toLowerCase().replace(' ', '-'), i, i, i, i));
  }

  private static void finding(StringBuilder text, String title, String line) {
    text.append("""
        ## %s

        ```finding
        %s
        ```

        Exchange it with the power off, then take the same reading again: it has to be back between 24 and 28 volts.

        """.formatted(title, line));
  }
}
