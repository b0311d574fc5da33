package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rungbook.source.Codes;

class ExplainTest {

  @Test
  void everyCodeWithAPageCanBeExplained() {
    for (String code : Codes.all()) {
      Run run = Run.in(Path.of(""), "explain", code);
      assertEquals(0, run.exit(), code);
      assertTrue(run.out().contains(code + ": "), run.out());
    }
    assertTrue(Codes.all().contains("unknown-step"));
  }
}
