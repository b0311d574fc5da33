package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.store.document.ZipWriter;
import rungbook.text.Sha256;

/** Packs, books and zips are the same bytes in every language and time zone. Each is a program of its own. */
@Tag("slow")
class OtherMachinesTest {

  private static final String TREE = "trees/fan-coil-no-electric-heat.md";

  private static final List<List<String>> MACHINES = List.of(
      List.of("-Duser.language=de", "-Duser.country=DE", "-Duser.timezone=Europe/Berlin"),
      List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Auckland"),
      List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=u-nu-arab",
          "-Duser.timezone=America/Denver"));

  @TempDir
  private Path folder;

  /** What such a machine makes, by its digest. */
  static final class Maker {

    private Maker() {}

    public static void main(String[] to) throws IOException {
      Path out = Path.of(to[0]).toAbsolutePath();
      pack(out.getParent(), "--to", out + "/packs");
      pack(out.getParent(), "--book", out + "/book.epub");
      try (ZipWriter zip = new ZipWriter(Files.newOutputStream(out.resolve("texts.zip")))) {
        zip.add(TREE, Files.readAllBytes(Path.of("lib", TREE)));
      }
    }

    private static void pack(Path folder, String option, String to) {
      Run run = Run.in(folder, "pack", "lib/" + TREE, option, to);
      assertEquals(0, run.exit(), run.out() + run.err());
    }
  }

  @Test
  void bytesDependOnNoLanguageAndNoTimeZone() throws IOException, InterruptedException {
    copy(Path.of("shared"));
    copy(Path.of("trees"));
    TreeMap<String, String> first = made(0);
    assertEquals(3, first.size(), first.toString());
    for (int machine = 1; machine < MACHINES.size(); machine++) {
      assertEquals(first, made(machine), MACHINES.get(machine).toString());
    }
  }

  /** The digest of each file, by its path. */
  private TreeMap<String, String> made(int machine) throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve("out" + machine));
    Process maker = Jvm.start(folder, MACHINES.get(machine), Maker.class, out.toString());
    String failure = new String(maker.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(maker.waitFor() == 0, failure);
    var digests = new TreeMap<String, String>();
    for (Path file : files(out)) {
      digests.put(out.relativize(file).toString(), Sha256.hex(Files.readAllBytes(file)));
    }
    return digests;
  }

  private void copy(Path from) throws IOException {
    for (Path file : files(from)) {
      Path to = folder.resolve("lib").resolve(file);
      Files.createDirectories(to.getParent());
      Files.copy(file, to);
    }
  }

  private static List<Path> files(Path under) throws IOException {
    try (Stream<Path> all = Files.walk(under)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
