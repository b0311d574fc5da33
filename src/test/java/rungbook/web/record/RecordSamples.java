package rungbook.web.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Records as packs wrote them, in {@code src/test/resources/rungbook/record}. */
public final class RecordSamples {

  public static final String FULL = read("full.json");

  /** The same as it is in QR pictures. */
  public static final String SHORT = read("short.json");

  private RecordSamples() {}

  static String read(String name) {
    try (InputStream in = RecordSamples.class.getResourceAsStream("/rungbook/record/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
