package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.management.OperatingSystemMXBean;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.text.ProcessorSpeed;

/**
 * Sends thousands of requests with mistakes in them: none is answered with 500, and none costs more than a second of
 * processor time. Few of them by default; {@code mvn -q test -Dtest=RequestFuzzTest -Dfuzz.requests=50000} sends
 * 50,000. Proofs are not among them: a proof is given 20 seconds.
 */
@Tag("server")
@QuarkusTest
class RequestFuzzTest {
  private static final int REQUESTS = Integer.getInteger("fuzz.requests", 500);
  private static final long SEED = Long.getLong("fuzz.seed", 20260103L);
  /** Until then, compiling the program itself takes processor time. */
  private static final int WARM_AFTER = 300;
  private static final long MOST_MILLIS = ProcessorSpeed.limitMillis(1_000);

  @TestHTTPResource("/")
  URI server;

  @Test
  void noRequestIsTheServersFaultAndNoneTakesLong() throws Exception {
    var processor = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    var requests = new RandomRequests(SEED, server);
    var faults = new ArrayList<String>();
    Map<Integer, Integer> answers = new TreeMap<>();
    var slowestMillis = 0L;
    // of HTTP/2 the server ends a connection on which too many requests were given up, as these often are
    var client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    try {
      // the first map loads the layout, which takes more than any map
      client.send(HttpRequest.newBuilder(server.resolve("/api/map/trees/no-cooling-blower-runs.md")).build(),
          BodyHandlers.discarding());
      for (var i = 0; i < REQUESTS; i++) {
        var request = requests.next();
        var began = processor.getProcessCpuTime();
        var answer = client.send(request, BodyHandlers.ofString());
        var millis = (processor.getProcessCpuTime() - began) / 1_000_000;
        answers.merge(answer.statusCode(), 1, Integer::sum);
        slowestMillis = i < WARM_AFTER ? 0 : Math.max(slowestMillis, millis);
        if (answer.statusCode() == 500 || i >= WARM_AFTER && millis > MOST_MILLIS) {
          faults.add("request " + i + " of seed " + SEED + ": " + request.method() + " " + request.uri() + " answered "
              + answer.statusCode()
              + " after " + millis + " ms");
        }
      }
    } finally {
      System.out
          .println(REQUESTS + " requests, answers " + answers + ", slowest " + slowestMillis + " ms of processor time");
    }
    assertEquals(List.of(), faults);
  }
}
