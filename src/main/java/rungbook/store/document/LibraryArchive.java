package rungbook.store.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;

/** Reads a library from a folder or zip, and writes one as a zip. */
public final class LibraryArchive {
  private LibraryArchive() {}

  /** One file as a browser sends it: its path inside the chosen folder, and the file with its bytes. */
  public record Upload(String name, Path bytes) {}

  /** Reads every file below a folder. */
  public static ImportBatch ofFolder(Path folder) throws IOException {
    try (var paths = Files.walk(folder)) {
      return ofUploads(paths.filter(Files::isRegularFile).sorted()
          .map(file -> new Upload(folder.relativize(file).toString(), file)).toList());
    }
  }

  /** Reads files that were chosen one by one or as a folder. */
  public static ImportBatch ofUploads(List<Upload> uploads) throws IOException {
    var intake = new ImportReader();
    for (var upload : uploads) {
      if (!intake.offer(upload.name(), () -> Files.newInputStream(upload.bytes()))) {
        break;
      }
    }
    return intake.finish();
  }

  /**
   * Reads a zip.
   *
   * @throws Refused when it is no zip, or one that cannot be read
   */
  public static ImportBatch ofZip(Path zip) throws IOException {
    return ZipReader.read(zip);
  }

  /** Writes the documents as a zip that {@link #ofZip} reads back; the same documents give the same bytes. */
  public static void writeZip(Collection<Revision> documents, OutputStream out) {
    try (var zip = new ZipWriter(out)) {
      documents.forEach(document -> zip.add(document.path().text(), document.content()));
    }
  }
}
