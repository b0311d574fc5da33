package rungbook.cli.cache;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/** The bytes of an entry: a mark, the key, a checksum, the content. */
final class Envelope {

  private static final byte[] MARK = "rungbook cache 1\n".getBytes(StandardCharsets.US_ASCII);

  private Envelope() {}

  static byte[] around(String key, byte[] content) {
    byte[] head = head(key);
    return ByteBuffer.allocate(head.length + Long.BYTES + content.length).put(head).putLong(sum(content)).put(content)
        .array();
  }

  /** The content; empty if the bytes are damaged, cut short, or those of another entry. */
  static Optional<byte[]> open(String key, byte[] bytes) {
    byte[] head = head(key);
    int start = head.length + Long.BYTES;
    if (bytes.length < start || !Arrays.equals(head, Arrays.copyOf(bytes, head.length))) {
      return Optional.empty();
    }
    byte[] content = Arrays.copyOfRange(bytes, start, bytes.length);
    return ByteBuffer.wrap(bytes).getLong(head.length) == sum(content) ? Optional.of(content) : Optional.empty();
  }

  private static byte[] head(String key) {
    byte[] name = (key + "\n").getBytes(StandardCharsets.US_ASCII);
    return ByteBuffer.allocate(MARK.length + name.length).put(MARK).put(name).array();
  }

  /** CRC-32 (ISO 3309) finds each change of up to 32 bits in a row, and all but one in 2³² of the others. */
  private static long sum(byte[] content) {
    var crc = new CRC32();
    crc.update(content);
    return crc.getValue();
  }
}
