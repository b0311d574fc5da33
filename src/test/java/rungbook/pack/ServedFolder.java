package rungbook.pack;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rungbook.pack.page.FileNames;

/** A library's folder as any web server would hand it out; the browser treats loopback as it treats HTTPS. */
final class ServedFolder implements AutoCloseable {

  private final Map<String, PackFile> files = new ConcurrentHashMap<>();
  private final HttpServer server;

  ServedFolder(List<PackFile> files) throws IOException {
    copy(files);
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", this::serve);
    server.start();
  }

  String root() {
    return "http://localhost:" + server.getAddress().getPort() + "/";
  }

  /** Over what is there. */
  void copy(List<PackFile> over) {
    over.forEach(file -> files.put(file.name(), file));
  }

  @Override
  public void close() {
    server.stop(0);
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
