package rungbook.proof.cases;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** Archives of a system's base and its variants as one, each led by its length. */
public final class JoinedArchives {

  private JoinedArchives() {}

  public static byte[] join(List<byte[]> parts) {
    ByteBuffer all = ByteBuffer.allocate(parts.stream().mapToInt(part -> Integer.BYTES + part.length).sum());
    parts.forEach(part -> all.putInt(part.length).put(part));
    return all.array();
  }

  /** The archives again; of a damaged one as many as its lengths allow. */
  public static List<byte[]> apart(byte[] archive) {
    ByteBuffer all = ByteBuffer.wrap(archive);
    List<byte[]> parts = new ArrayList<>();
    while (all.remaining() > Integer.BYTES) {
      byte[] part = new byte[Math.min(Math.max(0, all.getInt()), all.remaining())];
      all.get(part);
      parts.add(part);
    }
    return parts;
  }
}
