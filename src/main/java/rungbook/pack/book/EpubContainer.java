package rungbook.pack.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rungbook.text.ZipTime;

/**
 * The zip file of a book: its media type first and as it is, then its files in order (EPUB 3.3, section 4.2). The first
 * entry must have no further field.
 */
final class EpubContainer {

  private EpubContainer() {}

  static byte[] of(String mediaType, Map<String, byte[]> files) {
    var bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      byte[] type = mediaType.getBytes(StandardCharsets.US_ASCII);
      add(zip, stored(type), type);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        add(zip, new ZipEntry(file.getKey()), file.getValue());
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return bytes.toByteArray();
  }

  private static ZipEntry stored(byte[] content) {
    var sum = new CRC32();
    sum.update(content);
    var entry = new ZipEntry("mimetype");
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(content.length);
    entry.setCrc(sum.getValue());
    return entry;
  }

  private static void add(ZipOutputStream zip, ZipEntry entry, byte[] content) throws IOException {
    entry.setTimeLocal(ZipTime.NONE);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }
}
