package rungbook.store.document;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rungbook.text.ZipTime;

/** Writes zip files in which the same content gives the same bytes. */
public final class ZipWriter implements AutoCloseable {

  private final ZipOutputStream zip;

  public ZipWriter(OutputStream out) {
    this.zip = new ZipOutputStream(out);
  }

  /** @throws UncheckedIOException when the stream does not take it */
  public void add(String name, byte[] content) {
    try {
      var entry = new ZipEntry(name);
      entry.setTimeLocal(ZipTime.NONE);
      zip.putNextEntry(entry);
      zip.write(content);
      zip.closeEntry();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Writes the directory at the end, without which it is no zip. */
  @Override
  public void close() {
    try {
      zip.close();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
