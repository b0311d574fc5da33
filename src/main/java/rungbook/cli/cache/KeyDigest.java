package rungbook.cli.cache;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import rungbook.text.Sha256;

/** Hashes everything that an entry depends on to its key. Each part is led by its length, so no two run together. */
public final class KeyDigest {

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  public KeyDigest with(String text) {
    byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
    try {
      out.writeInt(encoded.length);
      out.write(encoded);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // memory cannot fail to be written to
    }
    return this;
  }

  public KeyDigest with(long number) {
    return with(Long.toString(number));
  }

  /** A SHA-256 as 64 hexadecimal digits. */
  public String key() {
    return Sha256.hex(bytes.toByteArray());
  }
}
