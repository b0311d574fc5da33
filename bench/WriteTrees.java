import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rungbook.bench.Samples;

/** Writes a library of sample trees: {@code WriteTrees FOLDER TREES STEPS}. */
final class WriteTrees {

  private WriteTrees() {}

  public static void main(String[] arguments) throws IOException {
    Path trees = Files.createDirectories(Path.of(arguments[0], "trees"));
    String text = Samples.tree(Integer.parseInt(arguments[2]));
    for (int i = 1; i <= Integer.parseInt(arguments[1]); i++) {
      Files.writeString(trees.resolve("tree-" + i + ".md"), text.replace("A chain of checks", "Chain " + i));
    }
  }
}
