package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartIT {
  @TempDir
  Path folder;

  @Test
  void aFirstRunHasTheWholeLibraryAndKeepsWhatIsSaved() throws Exception {
    var data = folder.resolve("data");
    try (var program = Packaged.start(data)) {
      assertTrue(program.get("/").body().contains("Marrow Hill Heating and Cooling"));
      assertEquals(200,
          program.send("PUT", "/api/documents/trees/kept.md", "{\"basedOn\":0,\"text\":\"kept\",\"author\":\"Tobin\"}")
              .statusCode());
    }
    try (var program = Packaged.start(data)) {
      assertTrue(program.get("/api/documents/trees/kept.md").body().contains("\"text\":\"kept\""));
      assertTrue(!program.log().contains("first run"), program.log());
    }
  }

  @Test
  void itListensOnLoopbackAndNowhereElse() throws Exception {
    try (var program = Packaged.start(folder.resolve("data"))) {
      for (var address : othersThanLoopback()) {
        Assertions.assertThrows(ConnectException.class, () -> new Socket(address, program.port()).close());
      }
    }
  }

  private static List<InetAddress> othersThanLoopback() throws Exception {
    return NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
        .filter(address -> !address.isLoopbackAddress()).toList();
  }

  @Test
  void aTakenPortAndALibraryInUseAreSaidInASentence() throws Exception {
    try (var taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      assertTrue(failedStart(folder.resolve("other"), taken.getLocalPort()).contains("the port is taken"));
    }
    try (var program = Packaged.start(folder.resolve("data"))) {
      assertTrue(program.port() > 0);
      assertTrue(
          failedStart(folder.resolve("data"), Packaged.freePort()).contains("another Rungbook has this library open"));
    }
  }

  @Test
  void portZeroPrintsThePortThatTheSystemChose() throws Exception {
    var log = Files.createTempFile(folder, "any-port", ".log");
    var program = Packaged.process(folder.resolve("data"), 0, log);
    try {
      var address = Pattern.compile("open http://127\\.0\\.0\\.1:([1-9]\\d*) ");
      var printed = address.matcher("");
      while (!printed.reset(Files.readString(log)).find()) {
        assertTrue(program.isAlive() && !Files.readString(log).contains(":-1"), Files.readString(log));
        Thread.sleep(20);
      }
      new Socket("127.0.0.1", Integer.parseInt(printed.group(1))).close();
    } finally {
      program.destroyForcibly().waitFor();
    }
  }

  private String failedStart(Path data, int port) throws Exception {
    var log = Files.createTempFile(folder, "failed", ".log");
    assertEquals(1, Packaged.process(data, port, log).waitFor());
    var said = Files.readString(log);
    assertTrue(!said.contains("\tat "), said);
    return said;
  }
}
