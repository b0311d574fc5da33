package rungbook.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.web.RawHttp;

@Tag("server")
@QuarkusTest
class BodyLimitsTest {
  private static final String HEAD = " HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\n";

  @TestHTTPResource("/")
  URL address;

  @ParameterizedTest
  @CsvSource({"POST /api/check,8", "PUT /api/documents/trees/a.md,8", "POST /api/preview,8",
      "PUT /api/files/trees/pictures/a.png,2",
      "POST /api/import,160", "POST /transfer,160", "POST /verify,160", "POST /history/discard-draft/trees/a.md,8"})
  void aLengthThatIsTooLargeForItsRouteIsRefusedBeforeTheBodyIsSent(String route, int mostMegabytes)
      throws IOException {
    var answer = RawHttp.send(address.getPort(),
        route + HEAD + "Content-Length: " + ((mostMegabytes << 20) + 1) + "\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 413 "), answer);
    assertTrue(answer.contains("application/problem+json") && answer.contains("larger than " + mostMegabytes + " MB"),
        answer);
  }

  @Test
  void aBodyThatDoesNotSayItsLengthIsCutOffWhereItIsTooLarge() throws Exception {
    try (var socket = new Socket(InetAddress.getByName("127.0.0.1"), address.getPort())) {
      socket.setSoTimeout(60_000);
      var out = socket.getOutputStream();
      out.write(("POST /api/check" + HEAD + "Transfer-Encoding: chunked\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      var answer = new StringBuilder();
      var reader = new Thread(() -> readAll(socket, answer));
      reader.start();
      var chunk = ("10000\r\n" + " ".repeat(1 << 16) + "\r\n").getBytes(StandardCharsets.US_ASCII);
      for (var sent = 0; sent <= 8 << 20; sent += 1 << 16) {
        out.write(chunk);
      }
      reader.join(60_000);
      assertTrue(answer.toString().startsWith("HTTP/1.1 413 ") && answer.toString().contains("larger than 8 MB"),
          answer.toString());
    }
  }

  private static void readAll(Socket socket, StringBuilder answer) {
    try {
      InputStream in = socket.getInputStream();
      for (var read = in.read(); read >= 0; read = in.read()) {
        answer.append((char) read);
        if (answer.indexOf("}") > 0) {
          return;
        }
      }
    } catch (IOException closed) {
      answer.append(closed);
    }
  }

  @Test
  void aBodyThatEndsEarlyIsAClientsFault() throws IOException {
    var answer = RawHttp.send(address.getPort(), "POST /api/check" + HEAD
        + "Content-Length: 30\r\nConnection: close\r\n\r\n{\"path\":\"trees/a.md\"}          ");
    assertTrue(answer.startsWith("HTTP/1.1 400 ") && answer.contains("no text"), answer);
  }

  @Test
  void asManyLargeBodiesAreWorkedOnAsTheMemoryHolds() {
    assertEquals(1, BodyLimits.permits(64L << 20));
    assertEquals(5, BodyLimits.permits(1L << 30));
    assertEquals(16, BodyLimits.permits(64L << 30));
  }
}
