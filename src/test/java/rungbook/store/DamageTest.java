package rungbook.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.store.document.Chain;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.web.StartFailureReason;

/**
 * Damage at random places of the database's file. Whatever it is, the library opens with all its revisions, or it is
 * said what is damaged and how to get it back.
 */
class DamageTest {
  private static final long SEED = 20260104;
  private static final int TRIES = Integer.getInteger("rungbook.damage.tries", 15);
  private static final int DOCUMENTS = 12;
  private static final int REVISIONS = 6;
  @TempDir
  static Path folder;
  private static byte[] sound;

  /** What happens to the file. */
  enum Damage {
    ONE_BIT, BITS_IN_A_PAGE, ZEROED_PAGE, JUNK_APPENDED, CUT_OFF, CUT_OFF_AND_JUNK
  }

  @BeforeAll
  static void fill() throws IOException, SQLException {
    var data = folder.resolve("sound");
    new DataFolder(data).prepare();
    try (var connection = open(data)) {
      for (var document = 1; document <= DOCUMENTS; document++) {
        fill(connection, document);
      }
    }
    sound = Files.readAllBytes(data.resolve(DataFolder.DATABASE));
  }

  private static Connection open(Path data) throws SQLException {
    var url = "jdbc:h2:file:" + data.toAbsolutePath() + "/rungbook;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    Flyway.configure().dataSource(url, "", "").locations("filesystem:src/main/resources/db/migration").load().migrate();
    return DriverManager.getConnection(url);
  }

  private static void fill(Connection connection, int document) throws SQLException {
    var path = new DocumentPath("trees/damage-" + document + ".md");
    try (var row = connection.prepareStatement("insert into document values (?, ?, ?, 1, ?)")) {
      row.setInt(1, document);
      row.setString(2, path.text());
      row.setInt(3, REVISIONS);
      row.setString(4, path.text());
      row.executeUpdate();
    }
    var parent = Chain.Hash.NONE;
    for (var number = 1; number <= REVISIONS; number++) {
      parent = save(connection, document, revision(path, number, parent));
    }
  }

  private static Revision revision(DocumentPath path, int number, Chain.Hash parent) {
    var content = new byte[2_000];
    new Random(number * 31L + path.text().hashCode()).nextBytes(content);
    var text = HexFormat.of().formatHex(content).getBytes(UTF_8);
    var hash = Chain.of(path, number, Revision.Change.WRITTEN, "Tobin", "", Instant.EPOCH, parent, text);
    return new Revision(path, number, Revision.Change.WRITTEN, "Tobin", "", Instant.EPOCH, parent, hash, text);
  }

  private static Chain.Hash save(Connection connection, int document, Revision revision) throws SQLException {
    try (var row = connection.prepareStatement("insert into revision (document_id, number, change, author, message,"
        + " saved_at, parent_hash, hash, content) values (?, ?, 'WRITTEN', 'Tobin', '', ?, ?, ?, ?)")) {
      row.setInt(1, document);
      row.setInt(2, revision.number());
      row.setTimestamp(3, Timestamp.from(revision.at()));
      row.setString(4, revision.parent().hex());
      row.setString(5, revision.hash().hex());
      row.setBytes(6, revision.content());
      row.executeUpdate();
    }
    return revision.hash();
  }

  static Stream<Arguments> damages() {
    return Stream.of(Damage.values()).flatMap(
        damage -> Stream.iterate(0, attempt -> attempt < TRIES, attempt -> attempt + 1)
            .map(attempt -> Arguments.of(damage, attempt)));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("damages")
  @Timeout(60)
  void nothingIsLostInSilence(Damage damage, int attempt) throws IOException {
    var data = Files.createTempDirectory(folder, "damaged");
    new DataFolder(data).prepare();
    new DataFolder(data).mark(DOCUMENTS * REVISIONS);
    var random = new Random(SEED + attempt * 10L + damage.ordinal());
    damage(damage, data.resolve(DataFolder.DATABASE), random);
    var said = start(data);
    assertFalse(said.contains("\tat "), said);
    assertTrue(said.equals("sound") || (said.contains("damaged") && said.contains("backup")), said);
  }

  private static void damage(Damage damage, Path database, Random random) throws IOException {
    Files.write(database, sound);
    try (var file = new RandomAccessFile(database.toFile(), "rw")) {
      var at = random.nextInt(sound.length);
      switch (damage) {
        case ONE_BIT -> flip(file, at, random);
        case BITS_IN_A_PAGE -> {
          for (var bit = 0; bit < 64; bit++) {
            flip(file, Math.min(sound.length - 1, at / 4096 * 4096 + random.nextInt(4096)), random);
          }
        }
        case ZEROED_PAGE -> {
          file.seek(at / 4096 * 4096);
          file.write(new byte[4096]);
        }
        case JUNK_APPENDED -> append(file, sound.length, random);
        case CUT_OFF -> file.setLength(at);
        case CUT_OFF_AND_JUNK -> {
          file.setLength(at);
          append(file, at, random);
        }
      }
    }
  }

  private static void flip(RandomAccessFile file, int at, Random random) throws IOException {
    file.seek(at);
    var old = file.read();
    file.seek(at);
    file.write(old ^ 1 << random.nextInt(8));
  }

  private static void append(RandomAccessFile file, int at, Random random) throws IOException {
    var junk = new byte[1 + random.nextInt(20_000)];
    random.nextBytes(junk);
    file.seek(at);
    file.write(junk);
  }

  /** What a start does; "sound" when every revision is what was saved. */
  private static String start(Path data) {
    try {
      var folder = new DataFolder(data);
      folder.prepare();
      try (var connection = open(data)) {
        return read(connection, folder);
      }
    } catch (Refused refused) {
      return refused.getMessage() + "; " + refused.hint();
    } catch (SQLException | RuntimeException | StackOverflowError failed) {
      return StartFailureReason.of(failed);
    }
  }

  private static String read(Connection connection, DataFolder folder) throws SQLException {
    try (var statement = connection.createStatement();
        var count = statement.executeQuery("select count(*) from revision")) {
      count.next();
      folder.requireAsManyAsHeld(count.getLong(1));
    }
    var checks = new TreeMap<String, Chain.Check>();
    var broken = new ArrayList<String>();
    try (var statement = connection.createStatement();
        var rows = statement.executeQuery("select d.path, r.* from revision r join document d on d.id = r.document_id"
            + " order by d.path, r.number")) {
      while (rows.next()) {
        var path = new DocumentPath(rows.getString("path"));
        var revision = new Revision(path, rows.getInt("number"), Revision.Change.valueOf(rows.getString("change")),
            rows.getString("author"), rows.getString("message"), rows.getTimestamp("saved_at").toInstant(),
            new Chain.Hash(rows.getString("parent_hash")), new Chain.Hash(rows.getString("hash")),
            rows.getBytes("content"));
        if (!checks.computeIfAbsent(path.text(), p -> new Chain.Check()).holds(revision)) {
          broken.add(path + " " + revision.number());
        }
      }
    }
    if (broken.isEmpty()) {
      assertEquals(DOCUMENTS * REVISIONS, checks.values().stream().mapToInt(check -> check.number() - 1).sum());
    }
    return broken.isEmpty() ? "sound" : "damaged: " + broken + "; " + DamagedDatabase.cure();
  }
}
