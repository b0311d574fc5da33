package rungbook.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/** Reads a library from a folder or zip, and writes one as a zip. */
public final class Folders {
  private Folders() {
  }

  /** One file as a browser sends it: its path inside the chosen folder, and where its bytes lie. */
  public record Upload(String name, Path bytes) {}

  /** Reads every file below a folder. */
  public static Incoming ofFolder(Path folder) throws IOException {
    try (var paths = Files.walk(folder)) {
      return ofUploads(paths.filter(Files::isRegularFile).sorted()
          .map(file -> new Upload(folder.relativize(file).toString(), file)).toList());
    }
  }

  /** Reads files that were chosen one by one or as a folder. */
  public static Incoming ofUploads(List<Upload> uploads) throws IOException {
    var intake = new Intake();
    for (var upload : uploads) {
      try (var in = Files.newInputStream(upload.bytes())) {
        if (!intake.offer(upload.name(), in)) {
          break;
        }
      }
    }
    return intake.finish();
  }

  /**
   * Reads a zip, its entries bounded as they inflate and not by what its directory claims.
   *
   * @throws ZipException when it is no zip, or a damaged one
   */
  public static Incoming ofZip(InputStream stream) throws IOException {
    var intake = new Intake();
    var entries = 0;
    try (var zip = new ZipInputStream(stream)) {
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        entries++;
        if (!entry.isDirectory() && !intake.offer(entry.getName(), zip)) {
          break;
        }
      }
    } catch (IllegalArgumentException unreadableName) {
      throw new ZipException("a file name in the zip is not UTF-8");
    }
    if (entries == 0) {
      throw new ZipException("this is not a zip file");
    }
    return intake.finish();
  }

  /** Writes the documents as a zip that {@link #ofZip} reads back; the same documents give the same bytes. */
  public static void writeZip(Collection<Revision> documents, OutputStream out) {
    try (var zip = new ZipWriter(out)) {
      documents.forEach(document -> zip.add(document.path().text(), document.content()));
    }
  }
}
