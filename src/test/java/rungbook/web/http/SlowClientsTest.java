package rungbook.web.http;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URL;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Many clients that send slowly, or nothing at all, keep nobody else waiting. */
@Tag("server")
@QuarkusTest
class SlowClientsTest {
  private static final int CLIENTS = 600;
  private static final int UNFINISHED = 400;
  private static final Duration PATIENCE = Duration.ofSeconds(5);
  private static final String ASKED = "GET /mark.svg HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n";
  private final List<Socket> sockets = new ArrayList<>();

  @TestHTTPResource("/")
  URL address;

  @AfterEach
  void closeAll() throws IOException {
    for (var socket : sockets) {
      socket.close();
    }
  }

  @Test
  void connectionsThatSendNothingAndHalfOfAHeaderHoldNobodyUp() throws IOException {
    for (var client = 0; client < CLIENTS; client++) {
      open(client % 2 == 0 ? "" : ASKED.substring(0, ASKED.length() - 4));
    }
    assertAnswered();
  }

  @Test
  void everyConnectionIsAnsweredHoweverManyStayOpen() throws IOException {
    for (var client = 0; client < CLIENTS; client++) {
      assertTrue(beginning(open(ASKED)).startsWith("HTTP/1.1 200 "), "client " + client);
    }
    assertAnswered();
  }

  @Test
  void bodiesThatAreNeverFinishedHoldNoReaderUp() throws IOException {
    for (var client = 0; client < UNFINISHED; client++) {
      open("PUT /api/documents/trees/slow-" + client + ".md HTTP/1.1\r\nHost: 127.0.0.1\r\n"
          + "Content-Type: application/json\r\nContent-Length: 1000\r\n\r\n{");
    }
    assertAnswered();
    var last = beginning(sockets.get(UNFINISHED - 1));
    assertTrue(last.startsWith("HTTP/1.1 503 ") && last.contains("Retry-After: 1"), last);
  }

  private void assertAnswered() throws IOException {
    for (var reader = 0; reader < 3; reader++) {
      var began = System.nanoTime();
      // a page, which needs a worker; the picture above does not
      assertTrue(beginning(open(ASKED.replace("/mark.svg", "/help"))).startsWith("HTTP/1.1 200 "));
      assertTrue(System.nanoTime() - began < PATIENCE.toNanos(), "a reader waited");
    }
  }

  private Socket open(String request) throws IOException {
    var socket = new Socket(InetAddress.getByName("127.0.0.1"), address.getPort());
    sockets.add(socket);
    socket.setSoTimeout(30_000);
    socket.getOutputStream().write(request.getBytes(US_ASCII));
    socket.getOutputStream().flush();
    return socket;
  }

  private static String beginning(Socket socket) throws IOException {
    var bytes = new byte[4096];
    var read = socket.getInputStream().read(bytes);
    return read < 0 ? "closed" : new String(bytes, 0, read, UTF_8);
  }
}
