package rungbook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Trees to check. */
final class Texts {

  static final String SOUND = """
      ---
      title: Control voltage
      complaint: Nothing happens on a call.
      ---

      ## Is it lit

      ```check
      look: status light
      ```

      - yes: [Works](#works)
      - no: [Dark](#dark)

      ## Works

      ```finding
      healthy: yes
      ```

      ## Dark

      ```finding
      fault: board dead
      refer: a senior technician
      ```
      """;

  static final String BROKEN = SOUND.replace("(#dark)", "(#drak)");

  private Texts() {}

  static Path write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
