package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.BindException;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StartFailureTest {
  @Test
  void theReasonIsFoundBelowWhatTheFrameworkSays() {
    assertTrue(reason(new BindException("x")).startsWith("the port is taken"));
    assertTrue(reason(new SQLException("x", "90020", 90020)).startsWith("another Rungbook"));
    assertTrue(
        reason(new SQLException("x", "90030", 90030)).startsWith("the library's database is damaged: x; keep a copy"));
    assertTrue(reason(new SQLException("syntax", "42001", 42001)).startsWith("the library's database is damaged"));
    assertEquals("SQLException: waited too long", reason(new SQLException("waited too long")));
    assertTrue(
        reason(new IOException("No space left on device")).startsWith("the disk that holds the library is full"));
  }

  @Test
  void aReasonThatNobodyForesawIsSaidAsItIs() {
    assertEquals("IllegalStateException: what really failed", reason(new IllegalStateException("what really failed")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"99999", "65536", "-1", "http", "123456", "8181 "})
  void whatIsNoPortIsSaid(String port) {
    assertTrue(assertThrows(IllegalArgumentException.class, () -> StartFailure.requirePort(port)).getMessage()
        .contains("is no port"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "1", "8181", "65535"})
  void aPortIsTaken(String port) {
    StartFailure.requirePort(port);
  }

  private static String reason(Throwable cause) {
    return StartFailure.reason(new RuntimeException("Failed to start quarkus", new RuntimeException(cause)));
  }
}
