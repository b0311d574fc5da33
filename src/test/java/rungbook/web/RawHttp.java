package rungbook.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Sends bytes that no well-behaved client sends, and returns the whole answer as text. */
public final class RawHttp {
  private static final int PATIENCE_MS = 30_000;

  private RawHttp() {}

  public static String send(int port, String request) throws IOException {
    try (var socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
      socket.setSoTimeout(PATIENCE_MS);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
