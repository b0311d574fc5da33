package rungbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import rungbook.web.Packaged;

/**
 * Times the packaged server from outside: its start on a library that is there, and the live check of a 100-step tree.
 */
public final class ServerBench {
  private static final int STARTS = 7;
  private static final int WARM_UP_CHECKS = 1_000;
  private static final int CHECKS = 3_000;
  private static final int STEPS = 100;

  private ServerBench() {}

  public static void main(String... none) throws Exception {
    var folder = Files.createTempDirectory("rungbook-bench");
    var data = folder.resolve("data");
    Packaged.start(data).close();
    System.out.printf(Locale.ROOT, "load when started: %s%n",
        Files.readString(java.nio.file.Path.of("/proc/loadavg")).split(" ")[0]);
    var starts = new double[STARTS];
    for (var i = 0; i < STARTS; i++) {
      try (var program = Packaged.start(data)) {
        starts[i] = seconds(program.startTime());
      }
    }
    report("server start, s (at most 2.5 asked)", starts);
    try (var program = Packaged.start(data)) {
      report("live check of a 100-step tree, ms (p99 at most 30 asked)", checks(program));
    }
  }

  // every text differs, as it does while somebody types
  private static double[] checks(Packaged program) throws IOException, InterruptedException {
    var tree = Samples.tree(STEPS).replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    var millis = new double[CHECKS];
    for (var i = -WARM_UP_CHECKS; i < CHECKS; i++) {
      var json = "{\"path\":\"trees/bench.md\",\"text\":\"" + tree + "typed " + i + "\"}";
      var began = System.nanoTime();
      var answer = program.send("POST", "/api/check", json);
      if (i >= 0) {
        millis[i] = (System.nanoTime() - began) / 1e6;
      }
      if (answer.statusCode() != 200 || !answer.body().contains("\"problems\":[]")) {
        throw new IOException("not a sound tree: " + answer.body());
      }
    }
    return millis;
  }

  private static double seconds(Duration duration) {
    return duration.toNanos() / 1e9;
  }

  private static void report(String what, double[] values) {
    Arrays.sort(values);
    System.out.printf(Locale.ROOT, "%s: least %.2f, median %.2f, 99th percentile %.2f, most %.2f of %d%n", what,
        values[0],
        values[values.length / 2], values[(int) Math.ceil(values.length * 0.99) - 1], values[values.length - 1],
        values.length);
  }
}
