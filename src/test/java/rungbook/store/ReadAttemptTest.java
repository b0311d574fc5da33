package rungbook.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ReadAttemptTest {
  private final AtomicInteger attempts = new AtomicInteger();

  private String read(int failures, String why) {
    return ReadAttempt.twice(() -> {
      if (attempts.incrementAndGet() <= failures) {
        throw new UncheckedIOException(new IOException(why));
      }
      return "read";
    });
  }

  @Test
  void whatAFullDiskLetFailIsReadOnceMore() {
    assertEquals("read", read(1, "No space left on device"));
    assertEquals(2, attempts.get());
  }

  @Test
  void asLongAsItIsFullTheReadFails() {
    assertThrows(UncheckedIOException.class, () -> read(9, "No space left on device"));
    assertEquals(2, attempts.get());
  }

  @Test
  void anyOtherFailureIsNotTriedAgain() {
    assertThrows(UncheckedIOException.class, () -> read(1, "Input/output error"));
    assertEquals(1, attempts.get());
  }
}
