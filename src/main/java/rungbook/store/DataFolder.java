package rungbook.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import rungbook.store.document.Refused;

/**
 * The folder that a library is kept in. It is looked at before the database is opened, so that a damaged or missing
 * database is named, and never taken for a new one.
 *
 * <p>A marker beside the database says how many revisions it held at the last start: revisions only ever grow in
 * number.
 */
public record DataFolder(Path folder) {
  static final String DATABASE = "rungbook.mv.db";
  static final String MARKER = "rungbook.held";
  private static final String UPLOADS = "uploads";
  // an H2 file begins with its header, written twice; MVStore documentation, "File Format"
  private static final int HEADER_BYTES = 4096;
  private static final byte[] HEADER = "H:".getBytes(StandardCharsets.US_ASCII);
  private static final Pattern HELD = Pattern.compile("revisions: (\\d{1,18})\\b");

  /**
   * Makes the folder where there is none, and leaves it readable by its owner alone.
   *
   * @throws Refused when no library can be kept in it, or when the one that was there is gone or damaged
   */
  public void prepare() {
    try {
      makeOwnersAlone();
      removeUploads();
      requireDatabase();
    } catch (IOException failed) {
      throw DiskFull.isReason(failed)
          ? new Refused("the disk that holds `" + folder + "` is full",
              "make room on it and start again; what was saved is safe")
          : new Refused("the folder `" + folder + "` cannot be used (" + OwnerOnly.why(failed) + ")",
              "choose a folder that you may write to with --data FOLDER");
    }
  }

  private void makeOwnersAlone() throws IOException {
    if (!Files.isDirectory(folder)) {
      OwnerOnly.createFolder(folder);
    } else if (isOurs()) {
      OwnerOnly.apply(folder);
    }
    if (!Files.isWritable(folder)) {
      throw new IOException("it is not writable");
    }
    if (!Files.exists(database())) {
      requireNeverHeld("missing");
      OwnerOnly.createFile(database());
    }
    try (var files = Files.newDirectoryStream(folder, "rungbook.*")) {
      for (var file : files) {
        OwnerOnly.apply(file);
      }
    }
  }

  /**
   * Whether nothing but a library is in it; the permissions of a folder that holds more are somebody else's to choose.
   */
  private boolean isOurs() throws IOException {
    try (var names = Files.list(folder)) {
      return names.map(path -> path.getFileName().toString())
          .allMatch(name -> name.startsWith("rungbook.") || name.equals(UPLOADS));
    }
  }

  // what a killed program had not finished to read
  private void removeUploads() throws IOException {
    var uploads = folder.resolve(UPLOADS);
    if (Files.isDirectory(uploads)) {
      try (var files = Files.newDirectoryStream(uploads)) {
        for (var file : files) {
          if (Files.isRegularFile(file)) {
            Files.delete(file);
          }
        }
      }
    }
  }

  private void requireDatabase() throws IOException {
    if (!Files.isRegularFile(database()) || !Files.isReadable(database()) || !Files.isWritable(database())) {
      throw new IOException("its file " + DATABASE + " cannot be read and written");
    }
    if (Files.size(database()) == 0) {
      requireNeverHeld("empty");
    } else if (!hasHeader()) {
      throw DamagedDatabase.refused(folder, "its first bytes are not those of a database");
    }
  }

  private void requireNeverHeld(String state) {
    if (held().isPresent()) {
      throw DamagedDatabase.refused(folder, "its file `" + DATABASE + "` is " + state);
    }
  }

  private boolean hasHeader() throws IOException {
    try (var in = Files.newInputStream(database())) {
      var start = in.readNBytes(2 * HEADER_BYTES);
      return start.length == 2 * HEADER_BYTES && (isHeader(start, 0) || isHeader(start, HEADER_BYTES));
    }
  }

  private static boolean isHeader(byte[] bytes, int at) {
    return Arrays.equals(bytes, at, at + HEADER.length, HEADER, 0, HEADER.length);
  }

  /** @throws Refused when the database holds fewer revisions than it once did */
  void requireAsManyAsHeld(long revisions) {
    held().ifPresent(before -> {
      if (revisions < before) {
        throw DamagedDatabase.refused(folder,
            "it holds " + revisions + " revisions and held " + before + " at the last start");
      }
    });
  }

  /** Remembers how many revisions there are. A library that is kept in no file of this folder leaves no marker. */
  void mark(long revisions) throws IOException {
    if (!Files.exists(database())) {
      return;
    }
    var part = folder.resolve(MARKER + ".part");
    Files.deleteIfExists(part);
    OwnerOnly.createFile(part);
    Files.writeString(part,
        "This folder holds a Rungbook library: without this file, a lost database would be taken for a new one.\n"
            + "revisions: " + revisions + "\n");
    try (var file = FileChannel.open(part, StandardOpenOption.WRITE)) {
      file.force(true);
    }
    Files.move(part, folder.resolve(MARKER), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    OwnerOnly.forceFolder(folder);
  }

  /** Nothing when the folder never held a library; 0 when its marker is unreadable. */
  private OptionalLong held() {
    try {
      if (!Files.exists(folder.resolve(MARKER))) {
        return OptionalLong.empty();
      }
      var found = HELD.matcher(new String(Files.readAllBytes(folder.resolve(MARKER)), StandardCharsets.ISO_8859_1));
      return OptionalLong.of(found.find() ? Long.parseLong(found.group(1)) : 0);
    } catch (IOException unreadable) {
      return OptionalLong.of(0);
    }
  }

  private Path database() {
    return folder.resolve(DATABASE);
  }
}
