package rungbook.store.document;

import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Reads a zip through the directory at its end: one that was cut off has none, and is refused whole. Only entries that
 * are part of a library are unpacked, and what they unpack to is bounded as they unpack, not by what the directory
 * claims.
 */
final class ZipReader {
  private static final int MOST_ENTRIES = 4 * StoreLimits.FILES_COUNT;
  private static final String AGAIN = "make the zip again, and see that it is copied whole";

  private ZipReader() {}

  /** @throws Refused when it is no zip, or one that cannot be read */
  static ImportBatch read(Path file) throws IOException {
    try (var zip = new ZipFile(file.toFile())) {
      if (zip.size() > MOST_ENTRIES) {
        throw new Refused("the zip has more than " + MOST_ENTRIES + " entries", "zip only the library's folder");
      }
      return read(zip);
    } catch (ZipException bad) {
      throw new Refused(reason(bad), AGAIN);
    } catch (EOFException bad) {
      throw new Refused("the zip is damaged: its directory leads beyond its end", AGAIN);
    } catch (IllegalArgumentException bad) {
      throw bad instanceof Refused ? bad : new Refused("a file name in the zip is not UTF-8", AGAIN);
    }
  }

  private static ImportBatch read(ZipFile zip) throws IOException {
    var intake = new ImportReader();
    for (var entries = zip.entries(); entries.hasMoreElements();) {
      var entry = entries.nextElement();
      if (!entry.isDirectory()
          && !intake.offer(entry.getName(), () -> new Unpacked(zip.getInputStream(entry), entry))) {
        break;
      }
    }
    return intake.finish();
  }

  private static String reason(ZipException bad) {
    var message = String.valueOf(bad.getMessage());
    if (message.contains("encrypted")) {
      return "the zip is encrypted";
    }
    return message.contains("END header") || message.contains("empty") ? "this is not a zip file, or it was cut off"
        : "the zip is damaged: " + message;
  }

  /** An entry's bytes, which must add up to the checksum in the directory and must not be a bomb. */
  private static final class Unpacked extends FilterInputStream {
    private static final long ALWAYS_TAKEN_BYTES = 1 << 20;
    /** Text shrinks to a tenth, seldom to a hundredth; the method's own bound is 1,032 (RFC 1951, from memory). */
    private static final long MOST_TIMES_LARGER = 500;
    private final CRC32 checksum = new CRC32();
    private final ZipEntry entry;
    private long bytes;

    Unpacked(InputStream content, ZipEntry entry) {
      super(content);
      this.entry = entry;
    }

    @Override
    public int read() throws IOException {
      var one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] to, int offset, int length) throws IOException {
      var read = super.read(to, offset, length);
      if (read < 0 && checksum.getValue() != entry.getCrc()) {
        throw new ZipException("is damaged in the zip");
      }
      if (read > 0) {
        checksum.update(to, offset, read);
        bytes += read;
      }
      if (bytes > ALWAYS_TAKEN_BYTES && bytes / MOST_TIMES_LARGER > entry.getCompressedSize()) {
        throw new ZipException("unpacks to more than " + MOST_TIMES_LARGER + " times its size");
      }
      return read;
    }
  }
}
