package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills the program while four writers save: what it had acknowledged is there afterward, and the chains hold. */
class CrashIT {
  private static final int KILLS = 3;
  private static final int WRITERS = 4;
  private static final int LEAST_SAVES = 30;
  private static final long SEED = 20260101;

  @TempDir
  Path folder;

  @Test
  void whatWasAcknowledgedSurvivesKillNine() throws Exception {
    var random = new Random(SEED);
    Map<String, Integer> acknowledged = new ConcurrentHashMap<>();
    var program = Packaged.start(folder.resolve("data"));
    for (var kill = 0; kill < KILLS; kill++) {
      writeUntilKilled(program, acknowledged, total(acknowledged) + LEAST_SAVES + random.nextInt(LEAST_SAVES));
      program = Packaged.start(folder.resolve("data"));
      assertKept(program, acknowledged);
    }
    program.close();
  }

  private static int total(Map<String, Integer> acknowledged) {
    return acknowledged.values().stream().mapToInt(revision -> revision).sum();
  }

  private static void writeUntilKilled(Packaged program, Map<String, Integer> acknowledged, int saves)
      throws Exception {
    var writers = new ArrayList<Thread>();
    for (var writer = 0; writer < WRITERS; writer++) {
      var path = "trees/crash-" + writer + ".md";
      writers.add(new Thread(() -> write(program, path, acknowledged)));
    }
    writers.forEach(Thread::start);
    while (total(acknowledged) < saves && writers.stream().anyMatch(Thread::isAlive)) {
      Thread.sleep(1);
    }
    assertTrue(total(acknowledged) >= saves, "the writers stopped by themselves: " + acknowledged);
    program.kill();
    for (var writer : writers) {
      writer.join();
    }
  }

  private static void write(Packaged program, String path, Map<String, Integer> acknowledged) {
    try {
      while (true) {
        var basedOn = acknowledged.getOrDefault(path, 0);
        var answer = program.send("PUT", "/api/documents/" + path, save(basedOn, "text " + (basedOn + 1)));
        if (answer.statusCode() == 200) {
          acknowledged.put(path, JsonPath.from(answer.body()).getInt("revision"));
        } else {
          // the save before the kill was kept although its answer never arrived
          acknowledged.put(path, JsonPath.from(answer.body()).getInt("current.entry.revision"));
        }
      }
    } catch (IOException killed) {
      return;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private static void assertKept(Packaged program, Map<String, Integer> acknowledged) throws Exception {
    for (var kept : acknowledged.entrySet()) {
      var history = JsonPath.from(program.get("/api/history/" + kept.getKey()).body());
      List<Integer> revisions = history.getList("revisions.revision");
      assertTrue(revisions.size() >= kept.getValue(), kept + " but only " + revisions.size());
      assertNull(history.getString("firstBroken"));
      var text = JsonPath.from(program.get("/api/documents/" + kept.getKey() + "?revision=" + kept.getValue()).body())
          .getString("text");
      assertEquals("text " + kept.getValue(), text);
    }
  }

  private static String save(int basedOn, String text) {
    return "{\"basedOn\":" + basedOn + ",\"text\":\"" + text + "\",\"author\":\"Odalys\",\"message\":\"\"}";
  }
}
