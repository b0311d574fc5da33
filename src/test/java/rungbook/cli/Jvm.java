package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A program in a JVM of its own with 256 MB, from the classes under test. */
final class Jvm {

  private static final String CLASSES = System.getProperty("surefire.test.class.path",
      System.getProperty("java.class.path"));

  private Jvm() {}

  static Process start(Path folder, String... arguments) throws IOException {
    return start(folder, Main.class, arguments);
  }

  static Process start(Path folder, Class<?> program, String... arguments) throws IOException {
    return start(folder, List.of(), program, arguments);
  }

  /** @param options of the JVM */
  static Process start(Path folder, List<String> options, Class<?> program, String... arguments) throws IOException {
    List<String> command = List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Drungbook.home=" + Path.of("").toAbsolutePath(),
        "-cp", absolute(CLASSES));
    return new ProcessBuilder(Stream.of(command, options, List.of(program.getName()), List.of(arguments))
        .flatMap(List::stream).toList()).directory(folder.toFile()).start();
  }

  private static String absolute(String classPath) {
    return String.join(java.io.File.pathSeparator,
        Stream.of(classPath.split(java.io.File.pathSeparator)).map(entry -> Path.of(entry).toAbsolutePath().toString())
            .toList());
  }
}
