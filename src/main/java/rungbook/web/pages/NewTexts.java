package rungbook.web.pages;

import java.util.List;
import rungbook.markdown.DocumentReader;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Source;

/** The texts that new documents begin with: small, complete, and free of problems. */
public final class NewTexts {
  /** A list of words to avoid. */
  public static final String WORDS = """
      ---
      title: Words to avoid
      ---

      | avoid | use | why |
      |---|---|---|
      | gas cock | gas shutoff | one name for one thing |
      """;

  private NewTexts() {}

  public static String tree(String title, String complaint, String system) {
    return """
        ---
        title: %s
        complaint: %s
        %s---

        Say in a sentence or two when this tree is the right one.

        ## First look

        ```check
        look: status light lit
        ```

        What to look at, and what it should look like.

        - yes: [Light is on](#light-is-on)
        - no: [Light is off](#light-is-off)

        ## Light is on

        ```finding
        refer: the senior technician
        ```

        What was found, and what to tell.

        ## Light is off

        ```finding
        refer: the senior technician
        ```

        What was found, and what to tell.
        """.formatted(quoted(title), quoted(complaint), system.isBlank() ? "" : "system: " + quoted(system) + "\n");
  }

  /** The same text under another title. */
  static String copy(String text, String title) {
    var source = new Source("", text);
    return DocumentReader.read(source).front("title")
        .map(line -> Fix.apply(text, List.of(new Edit(source, line.valueSpan(), quoted(title))))).orElse(text);
  }

  /** @param folder one of the shared folders, with its slash */
  public static String shared(String folder, String title) {
    return "---\ntitle: " + quoted(title) + "\n" + switch (folder) {
      case "shared/cautions/" -> """
          level: caution
          hazard: What hurts, and what it does to you.
          avoid: What to do about it.
          ---

          The rest that a technician must know.
          """;
      case "shared/qualifications/" -> """
          rule: where the rule is
          covers:
          ---

          Who holds it, and what an apprentice may do.
          """;
      case "shared/meters/" -> "---\n\n```meter\nAC volts: 0 to 600 V, digit 0.1 V, 1 % + 3 digits, 10 Mohm\n```\n";
      case "shared/systems/" -> """
          ---

          The sequence of operation.

          ```locations
          thermostat: start
          ```

          ```points
          R: at thermostat
          ```

          ```faults
          ```
          """;
      default -> """
          exits: done
          ---

          ## Do it

          ```task
          ```

          - done: [Done](#done)

          ## Done

          ```exit
          answer: done
          ```
          """;
    };
  }

  // a colon or a leading sign means something in front matter; in quotes it is only itself
  private static String quoted(String value) {
    var plain = value.replaceAll("\\p{Cntrl}+", " ");
    return plain.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ,.'()/-]*") ? plain
        : "\"" + plain.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
