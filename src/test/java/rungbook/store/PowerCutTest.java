package rungbook.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Outcome;
import rungbook.store.document.Save;

/**
 * What was acknowledged is there after a power cut: the disk below the database is one that loses what was not forced.
 */
@Tag("server")
@QuarkusTest
@TestProfile(PowerCutTest.OnSimulatedDisk.class)
class PowerCutTest {
  private static final long SEED = 20260102;
  private static final int CUTS = 10;
  private static final int WRITERS = 8;
  private static final Path DATABASE = Path.of("power-cut.mv.db");

  /** The library in a file on the simulated disk, with the settings of the program. */
  public static final class OnSimulatedDisk implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      try {
        var folder = Files.createTempDirectory("rungbook-power-cut").toAbsolutePath();
        return Map.of("quarkus.datasource.jdbc.url",
            "jdbc:h2:simulated:" + folder + "/power-cut;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE",
            "rungbook.data", folder.toString());
      } catch (IOException failed) {
        throw new UncheckedIOException(failed);
      }
    }
  }

  @Inject
  Store store;
  @TempDir
  Path folder;

  @Test
  void oneSaveIsForcedOnceBeforeItIsAnswered() throws Exception {
    var random = new Random(SEED);
    for (var number = 1; number <= 10; number++) {
      var before = SimulatedDisk.syncs(DATABASE);
      save("trees/cut-one.md", number - 1);
      assertEquals(1, SimulatedDisk.syncs(DATABASE) - before);
      assertKept(Map.of("trees/cut-one.md", number), random);
    }
  }

  @Test
  void concurrentSavesShareTheirSyncs() throws Exception {
    var saves = 50;
    var threads = Executors.newFixedThreadPool(saves);
    var start = new CountDownLatch(1);
    var before = SimulatedDisk.syncs(DATABASE);
    try {
      var saved = new ArrayList<Future<?>>();
      for (var i = 0; i < saves; i++) {
        var path = "trees/cut-shared-" + i + ".md";
        saved.add(threads.submit(() -> {
          start.await();
          save(path, 0);
          return path;
        }));
      }
      start.countDown();
      for (var each : saved) {
        each.get(60, TimeUnit.SECONDS);
      }
    } finally {
      threads.shutdown();
    }
    var syncs = SimulatedDisk.syncs(DATABASE) - before;
    assertTrue(syncs > 0 && syncs < saves, syncs + " syncs for " + saves + " saves");
  }

  @Test
  void whateverTheMomentOfTheCutNothingAcknowledgedIsLost() throws Exception {
    var random = new Random(SEED);
    var acknowledged = new ConcurrentHashMap<String, Integer>();
    var isOver = new AtomicBoolean();
    var threads = Executors.newFixedThreadPool(WRITERS);
    try {
      var writers = new ArrayList<Future<?>>();
      for (var writer = 0; writer < WRITERS; writer++) {
        var path = "trees/cut-" + writer + ".md";
        writers.add(threads.submit(() -> write(path, acknowledged, isOver)));
      }
      for (var cut = 0; cut < CUTS; cut++) {
        Thread.sleep(50 + random.nextInt(50));
        assertKept(new HashMap<>(acknowledged), random);
      }
      isOver.set(true);
      for (var writer : writers) {
        writer.get(60, TimeUnit.SECONDS);
      }
      assertTrue(acknowledged.values().stream().mapToInt(n -> n).sum() > 50,
          "too few saves to show anything: " + acknowledged);
    } finally {
      isOver.set(true);
      threads.shutdown();
    }
  }

  private void write(String path, Map<String, Integer> acknowledged, AtomicBoolean isOver) {
    for (var number = 1; !isOver.get(); number++) {
      save(path, number - 1);
      acknowledged.put(path, number);
    }
  }

  private void save(String path, int basedOn) {
    var save = Save.written(new DocumentPath(path), basedOn, ("text " + (basedOn + 1)).getBytes(UTF_8), "Odalys", "");
    assertInstanceOf(Outcome.Saved.class, store.save(save));
  }

  private void assertKept(Map<String, Integer> acknowledged, Random random) throws IOException {
    var left = Files.createTempDirectory(folder, "cut").resolve("left");
    SimulatedDisk.cut(DATABASE, Path.of(left + ".mv.db"), random);
    var missing = new ArrayList<String>();
    // only read: H2's tidying at a close asserts that no large value was half written when the power went
    try (var connection = DriverManager.getConnection("jdbc:h2:file:" + left + ";ACCESS_MODE_DATA=r");
        var query = connection.prepareStatement("select content from revision r join document d on d.id = r.document_id"
            + " where d.path = ? and r.number = ?")) {
      for (var each : acknowledged.entrySet()) {
        query.setString(1, each.getKey());
        query.setInt(2, each.getValue());
        try (var found = query.executeQuery()) {
          if (!found.next() || !("text " + each.getValue()).equals(new String(found.getBytes(1), UTF_8))) {
            missing.add(each.toString());
          }
        }
      }
    } catch (SQLException nothingLeft) {
      missing.add("all of " + acknowledged + ": " + nothingLeft.getMessage());
    }
    assertEquals(List.of(), missing);
  }
}
