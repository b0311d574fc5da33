package rungbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * A program that checks the {@code tree.md} of one folder after the other, each with a console of its own, and leaves
 * there what was printed and the milliseconds it took: as {@code out}, {@code err} and {@code millis}.
 */
final class ChecksInOne {

  private ChecksInOne() {}

  public static void main(String[] folders) throws IOException {
    for (String name : folders) {
      Path folder = Path.of(name);
      long start = System.nanoTime();
      Run run = Run.in(folder, "check", "tree.md");
      long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
      Files.writeString(folder.resolve("out"), run.out(), StandardCharsets.UTF_8);
      Files.writeString(folder.resolve("err"), run.err(), StandardCharsets.UTF_8);
      Files.writeString(folder.resolve("millis"), String.valueOf(millis));
    }
  }
}
