package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.browser.Browser;
import rungbook.pack.page.FileNames;

/** A library's folder as any web server would hand it out; the browser treats loopback as it treats HTTPS. */
@Tag("browser")
class LibraryServedTest {

  private final Map<String, PackFile> files = LibraryFolder
      .of(Samples.starters(), List.of(), Samples.practice()).stream()
      .collect(Collectors.toMap(PackFile::name, file -> file));

  @Test
  void wholeLibraryOpensAfterTheServerIsGone() throws IOException {
    HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", this::serve);
    server.start();
    String root = "http://localhost:" + server.getAddress().getPort() + "/";
    try (Browser browser = Browser.start()) {
      browser.open(root).until("document.body.innerText.includes('It opens without a signal')");
      assertEquals(List.of(), browser.complaints());
      server.stop(0);
      browser.open(root + "index.html").until("document.title == 'Rungbook library'");
      browser.find(".trees .way").click();
      browser.until("document.querySelector('.begin')");
      assertTrue(browser.find("h1").isDisplayed());
    } finally {
      server.stop(0);
    }
  }

  private void serve(HttpExchange exchange) throws IOException {
    String asked = exchange.getRequestURI().getPath().substring(1);
    PackFile file = files.get(asked.isEmpty() ? FileNames.INDEX : asked);
    byte[] bytes = file == null ? new byte[0] : file.bytes();
    exchange.getResponseHeaders().set("Content-Type", type(asked));
    exchange.sendResponseHeaders(file == null ? 404 : 200, bytes.length == 0 ? -1 : bytes.length);
    exchange.getResponseBody().write(bytes);
    exchange.close();
  }

  private static String type(String name) {
    return name.endsWith(".js") ? "text/javascript"
        : name.endsWith(".webmanifest") ? "application/manifest+json" : "text/html";
  }
}
