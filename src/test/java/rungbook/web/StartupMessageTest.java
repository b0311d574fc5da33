package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import io.restassured.RestAssured;
import io.vertx.core.http.HttpServerOptions;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jboss.logmanager.ExtLogRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Tests run on port 0: the system chooses a port, and the message names that one. */
@QuarkusTest
@Tag("server")
class StartupMessageTest {
  @Inject
  StartupMessage message;

  @Inject
  HttpServer server;

  @Test
  void theAddressHasThePortThatTheSystemChose() {
    var log = new Recorded();
    Logger.getLogger("rungbook").addHandler(log);
    try {
      message.print(new HttpServerStart(new HttpServerOptions().setPort(-1)), server);
    } finally {
      Logger.getLogger("rungbook").removeHandler(log);
    }
    assertEquals(List.of("open http://127.0.0.1:" + RestAssured.port + " in a browser; Ctrl-C stops it"), log.lines);
  }

  private static final class Recorded extends Handler {
    private final List<String> lines = new ArrayList<>();

    @Override
    public void publish(LogRecord line) {
      lines.add(((ExtLogRecord) line).getFormattedMessage());
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
