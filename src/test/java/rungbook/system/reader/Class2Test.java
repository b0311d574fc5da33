package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.source.Problem;
import rungbook.system.BenchSystem;

/**
 * The limits of a Class 2 source from 20 to 30 V that is not inherently limited: 30 V (UL 1585), a nameplate of 100 VA,
 * and overcurrent protection of 100/U A (IEC 60950-1 Table 2C; NEC Chapter 9 Table 11(A) from memory), each from both
 * sides.
 */
class Class2Test {

  private static final String BLOCKS = """
      ```parts
      supply: supply, 120 V, 0.05 ohm, L to N
      bond: joint, N to ground
      transformer: transformer, 120 V primary, 24 V secondary, %s VA, regulation %s %% of full load, L to N, R to C%s
      fuse: fuse, %s A, R to A
      lamp: load, 24 V, 5 VA, A to C
      ```
      """;

  @ParameterizedTest
  @CsvSource({"40, 24.9, 3, ''", "40, 25.1, 3, transformer-outside-class-2", "100, 10, 3, ''",
      "101, 10, 3, transformer-outside-class-2",
      "40, 10, 4.16, ''", "40, 10, 4.17, fuse-outside-class-2"})
  void limitsHoldUpToTheirValue(String voltAmps, String regulation, String amps, String code) {
    List<Problem> problems = BenchSystem.read("L N R C A", BLOCKS.formatted(voltAmps, regulation, "", amps)).problems();
    assertEquals(code.isEmpty() ? List.of() : List.of(code),
        problems.stream().map(problem -> problem.code().name()).toList());
  }

  /** A transformer that limits its own current needs no fuse, and the limits are for Class 2 alone. */
  @ParameterizedTest
  @CsvSource({"40, 10, ', inherently limited', 5, ''",
      "101, 10, ', inherently limited', 5, transformer-outside-class-2",
      "150, 30, ', class 1', 10, ''"})
  void theTextSaysWhatLimitsThePower(String voltAmps, String regulation, String limit, String amps, String code) {
    List<Problem> problems = BenchSystem.read("L N R C A", BLOCKS.formatted(voltAmps, regulation, limit, amps))
        .problems();
    assertEquals(code.isEmpty() ? List.of() : List.of(code),
        problems.stream().map(problem -> problem.code().name()).toList());
  }
}
