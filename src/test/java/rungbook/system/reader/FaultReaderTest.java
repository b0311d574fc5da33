package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.source.Problem;
import rungbook.source.Wording;
import rungbook.system.BenchSystem;

/** A fault that cannot be, or would do nothing, is a problem where it is written. */
class FaultReaderTest {

  private static final String BLOCKS = """
      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      neutral bond: joint, N to ground
      transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 10 % of full load, L1 to N, T to C
      control fuse: fuse, 3 A, T to R
      call contact: contact, R to Y, closed when call on
      coil: coil, 24 V, 7.5 VA, Y to C
      capacitor: capacitor, L1 to N, 10 uF
      running: state, when coil on
      ```
      """;

  private static List<Problem> problems(String effect) {
    String faults = "\n```faults\nfault: " + effect + ", likelihood 1\n```\n";
    return BenchSystem.read("L1 N T C R Y", BLOCKS + faults).problems();
  }

  @ParameterizedTest
  @ValueSource(strings = {"hold control fuse open", "hold coil closed", "hold supply open",
      "hold transformer primary open", "hold neutral bond open",
      "stop call contact", "stop control fuse", "stop neutral bond", "lower coil to 5 to 6 V", "weaken coil 2 times",
      "weaken control fuse 2 times",
      "tap supply for 208 V", "open neutral bond", "short neutral bond", "raise neutral bond by 5 ohm", "open running",
      "hold running open",
      "cross coil with coil", "cross neutral bond with control fuse",
      "weaken coil to 50 to 80 %", "weaken transformer to 50 %", "overload transformer to 150 %",
      "overload running to 150 %", "stiffen call contact to 20 V", "short neutral bond through 5 ohm"})
  void anEffectThatThePartCannotHaveIsRefused(String effect) {
    assertTrue(problems(effect).stream().anyMatch(problem -> problem.code().name().equals("effect-not-for-part")),
        () -> problems(effect).toString());
  }

  @Test
  void theMessageNamesTheRightVerbs() {
    Problem problem = problems("hold control fuse open").get(0);
    assertEquals("`control fuse` is a fuse and cannot be held", Wording.of(problem).sentence(problem));
    assertEquals("write `open control fuse`, `short control fuse`, `raise control fuse by 5 ohm`",
        Wording.of(problem).hint(problem));
    assertEquals("hold control fuse open",
        problem.source().text().substring(problem.span().start(), problem.span().end()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"weaken transformer 0 times", "weaken transformer 0.5 times", "weaken transformer 1 times",
      "tap transformer for 0 V",
      "lower supply to 200 to 100 V", "lower supply to 0 to 100 V", "raise coil by 0 ohm", "raise coil by 2000000 ohm",
      "weaken transformer 99999999999999999999999999999999999999999999 times",
      "weaken transformer 3 to 2 times", "raise coil by 5 to 1 ohm", "raise coil by 0 to 5 ohm",
      "short Y to C through 0 to 2000 ohm", "short coil through 0 ohm", "overload coil to 90 to 120 %",
      "overload coil to 2000 %", "stiffen coil to 0 V", "weaken capacitor to 100 %", "weaken capacitor to 0 to 50 %"})
  void aFigureThatCannotBeIsRefused(String effect) {
    assertEquals(List.of("absurd-quantity"),
        problems(effect).stream().map(problem -> problem.code().name()).distinct().toList());
  }

  @ParameterizedTest
  @CsvSource({"short Y to Y", "short ground to ground"})
  void nothingTouchesItself(String effect) {
    assertEquals(List.of("fault-joins-itself"),
        problems(effect).stream().map(problem -> problem.code().name()).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"open control fuse", "short call contact", "short transformer secondary",
      "raise supply by 1 ohm", "stop running",
      "weaken transformer 1.5 times", "tap transformer for 208 V", "lower supply to 90 to 90 V", "short Y to ground",
      "lower supply to 90 V", "weaken transformer 2 to 6 times", "raise call contact by 1 to 5 ohm",
      "short Y to ground through 100 to 2000 ohm", "short coil through 5 to 20 ohm", "stiffen coil to 20 to 26 V",
      "overload coil to 120 to 160 %", "weaken capacitor to 50 to 80 %"})
  void whatCanBeIsRead(String effect) {
    assertEquals(List.of(), problems(effect));
  }
}
