package rungbook.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.EnumSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungbook.store.document.Refused;

class DataFolderTest {
  private static final int REVISIONS = 400;
  @TempDir
  Path parent;
  private Path folder;
  private Path database;

  @BeforeEach
  void fill() throws IOException, SQLException {
    folder = parent.resolve("data");
    database = folder.resolve(DataFolder.DATABASE);
    new DataFolder(folder).prepare();
    try (var connection = DriverManager.getConnection(url()); var statement = connection.createStatement()) {
      statement.execute("create table revision (id int primary key, content varchar(4000))");
      for (var id = 0; id < REVISIONS; id++) {
        statement.execute("insert into revision values (" + id + ", '"
            + Long.toHexString(new Random(id).nextLong()).repeat(60) + "')");
      }
    }
    new DataFolder(folder).mark(REVISIONS);
  }

  private String url() {
    return "jdbc:h2:file:" + folder.toAbsolutePath() + "/rungbook;WRITE_DELAY=0";
  }

  /** What becomes of a database file: the ways in which one was lost when damage was tried by hand. */
  enum Damage {
    MISSING, EMPTY, HALF, A_TENTH, ZEROED_HEADERS, ALL_ZERO, TEXT, RANDOM, FIRST_PAGE_ONLY, OTHER_EMPTY_DATABASE
  }

  /** H2 may open these, at the last state that it finds whole, and tidies the file as it closes it. */
  private static final Set<
      Damage> SEEN_AFTER_OPENING = EnumSet.of(Damage.HALF, Damage.A_TENTH, Damage.OTHER_EMPTY_DATABASE);

  @ParameterizedTest
  @EnumSource
  void aDamagedDatabaseIsNamedWithItsCureAndNeverTakenForANewOne(Damage damage) throws Exception {
    damage(damage);
    var before = Files.exists(database) ? Files.size(database) : -1;
    var said = start();
    assertTrue(said.contains("damaged") && said.contains("backup"), damage + ": " + said);
    if (!SEEN_AFTER_OPENING.contains(damage)) {
      assertEquals(before, Files.exists(database) ? Files.size(database) : -1, "the damaged file is left as it is");
    }
  }

  private void damage(Damage damage) throws IOException, SQLException {
    var size = Files.size(database);
    switch (damage) {
      case MISSING -> Files.delete(database);
      case EMPTY -> cutTo(0);
      case HALF -> cutTo(size / 2);
      case A_TENTH -> cutTo(size / 10);
      case FIRST_PAGE_ONLY -> cutTo(4096);
      case ZEROED_HEADERS -> overwrite(new byte[8192]);
      case ALL_ZERO -> overwrite(new byte[(int) size]);
      case TEXT -> Files.writeString(database, "this is no database\n".repeat(1000));
      case RANDOM -> {
        var bytes = new byte[(int) size];
        new Random(1).nextBytes(bytes);
        overwrite(bytes);
      }
      case OTHER_EMPTY_DATABASE -> {
        Files.delete(database);
        try (var connection = DriverManager.getConnection(url()); var statement = connection.createStatement()) {
          statement.execute("create table revision (id int primary key, content varchar(4000))");
        }
      }
    }
  }

  private void cutTo(long size) throws IOException {
    try (var file = new RandomAccessFile(database.toFile(), "rw")) {
      file.setLength(size);
    }
  }

  private void overwrite(byte[] bytes) throws IOException {
    try (var file = new RandomAccessFile(database.toFile(), "rw")) {
      file.write(bytes);
    }
  }

  /** What a start does with the folder; what it says when it ends. */
  private String start() throws IOException {
    try {
      var data = new DataFolder(folder);
      data.prepare();
      try (var connection = DriverManager.getConnection(url());
          var statement = connection.createStatement();
          var count = statement.executeQuery("select count(*) from revision")) {
        count.next();
        data.requireAsManyAsHeld(count.getLong(1));
        data.mark(count.getLong(1));
        return "started";
      }
    } catch (Refused refused) {
      return refused.getMessage() + "; " + refused.hint();
    } catch (SQLException failed) {
      return DamagedDatabase.isReason(failed) ? "damaged; " + DamagedDatabase.cure() : failed.toString();
    }
  }

  @Test
  void aSoundLibraryStartsAgain() throws IOException {
    assertEquals("started", start());
    assertEquals("started", start());
  }

  @Test
  void aFirstStartThatWasKilledBeforeAnythingWasKeptIsAFirstStartAgain() throws IOException {
    var other = new DataFolder(parent.resolve("first"));
    other.prepare();
    other.prepare();
    assertEquals(0, Files.size(other.folder().resolve(DataFolder.DATABASE)));
  }

  @Test
  void folderAndFilesAreTheirOwnersAlone() throws IOException {
    assertEquals("rwx------", permissions(folder));
    assertEquals("rw-------", permissions(database));
    assertEquals("rw-------", permissions(folder.resolve(DataFolder.MARKER)));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.setPosixFilePermissions(database, PosixFilePermissions.fromString("rw-r--r--"));
    new DataFolder(folder).prepare();
    assertEquals("rwx------", permissions(folder));
    assertEquals("rw-------", permissions(database));
  }

  @Test
  void aFolderThatHoldsMoreKeepsItsPermissions() throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "x");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    new DataFolder(folder).prepare();
    assertEquals("rwxr-xr-x", permissions(folder));
    assertEquals("rw-------", permissions(database));
  }

  private static String permissions(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @Test
  void whatAKilledProgramLeftOfUploadsIsRemoved() throws IOException {
    Files.createDirectory(folder.resolve("uploads"));
    Files.writeString(folder.resolve("uploads/left"), "x");
    new DataFolder(folder).prepare();
    assertFalse(Files.exists(folder.resolve("uploads/left")));
  }

  @Test
  void aFolderThatCannotBeUsedIsOneClearSentence() throws IOException {
    var file = Files.writeString(parent.resolve("file"), "x");
    for (var unusable : new Path[] {file, file.resolve("below"), Path.of("/proc/rungbook")}) {
      var refused = assertThrows(Refused.class, () -> new DataFolder(unusable).prepare());
      assertTrue(refused.getMessage().startsWith("the folder `" + unusable + "` cannot be used ("),
          refused.getMessage());
    }
  }
}
