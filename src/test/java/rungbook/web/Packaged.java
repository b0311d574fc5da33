package rungbook.web;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * The packaged program as people run it, in a process of its own on the loopback address. {@code mvn package} makes
 * it.
 */
public final class Packaged implements AutoCloseable {
  private static final Path JAR = Path.of("target/quarkus-app/quarkus-run.jar");
  // the first start of a build is a rehearsal and a start
  private static final Duration PATIENCE = Duration.ofMinutes(3);
  private static final HttpClient CLIENT = HttpClient.newBuilder().connectTimeout(PATIENCE).build();
  private final Process process;
  private final int port;
  private final Path log;
  private final Duration startTime;

  private Packaged(Process process, int port, Path log, Duration startTime) {
    this.process = process;
    this.port = port;
    this.log = log;
    this.startTime = startTime;
  }

  /** Starts it on a folder and waits until it answers. */
  public static Packaged start(Path data) throws IOException, InterruptedException {
    var port = freePort();
    var log = Files.createTempFile(data.toAbsolutePath().getParent(), "rungbook", ".log");
    var began = System.nanoTime();
    var process = process(data, port, log);
    while (!Files.readString(log).contains("open http://127.0.0.1:" + port)) {
      if (!process.isAlive() || System.nanoTime() - began > PATIENCE.toNanos()) {
        throw new IOException("it did not start:\n" + Files.readString(log));
      }
      Thread.sleep(5);
    }
    return new Packaged(process, port, log, Duration.ofNanos(System.nanoTime() - began));
  }

  /** Starts it without waiting, its output in a file. */
  public static Process process(Path data, int port, Path log) throws IOException {
    if (!Files.isRegularFile(JAR)) {
      throw new IOException(JAR + " is not there; run mvn package first");
    }
    return new ProcessBuilder("./rungbook", "serve", "--port", String.valueOf(port), "--data", data.toString())
        .redirectErrorStream(true).redirectOutput(log.toFile()).start();
  }

  public static int freePort() throws IOException {
    try (var socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  /** From the command to the line that prints the address. */
  public Duration startTime() {
    return startTime;
  }

  public int port() {
    return port;
  }

  public String log() throws IOException {
    return Files.readString(log);
  }

  public HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return CLIENT.send(request(path).GET().build(), BodyHandlers.ofString());
  }

  public HttpResponse<String> send(String method, String path, String json) throws IOException, InterruptedException {
    return CLIENT.send(
        request(path).header("Content-Type", "application/json").method(method, BodyPublishers.ofString(json)).build(),
        BodyHandlers.ofString());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).timeout(PATIENCE);
  }

  /** Kills it as {@code kill -9} does: it has no chance to put anything in order. */
  public void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  @Override
  public void close() throws InterruptedException {
    process.destroy();
    process.waitFor();
  }
}
