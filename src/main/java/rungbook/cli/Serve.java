package rungbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Starts the server as a separate process; the launcher does this directly if it can. */
@Command(name = "serve", description = "Start the server on this machine and print its address")
final class Serve implements Callable<Integer> {

  private final Console terminal;

  @Option(names = "--port", paramLabel = "PORT",
      description = "the port on the loopback address (default: 8181)")
  private Optional<Integer> port = Optional.empty();

  @Option(names = "--data", paramLabel = "FOLDER", description = "the folder of the library (default: ./data)")
  private Optional<Path> data = Optional.empty();

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  Serve(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Path jar = terminal.home().map(home -> home.resolve("target/quarkus-app/quarkus-run.jar"))
        .filter(Files::isRegularFile)
        .orElseThrow(
            () -> new UsageError("the server is not built", "start it with `./rungbook serve`, which builds it"));
    Process server = new ProcessBuilder(command(jar)).inheritIO().start();
    Runtime.getRuntime().addShutdownHook(new Thread(server::destroy));
    return server.waitFor();
  }

  private List<String> command(Path jar) {
    var command = new ArrayList<String>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
    port.ifPresent(number -> command.add("-Drungbook.port=" + number));
    data.ifPresent(folder -> command.add("-Drungbook.data=" + terminal.folder().resolve(folder).toAbsolutePath()));
    command.addAll(List.of("-jar", jar.toString()));
    return command;
  }
}
