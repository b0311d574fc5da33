package rungbook.cli.cache;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** What a build of the program is: another build, or another JDK, may compute something else. */
public final class ProgramDigest {

  private ProgramDigest() {}

  /** Empty if the program cannot read itself; then nothing is kept. */
  public static Optional<String> ofThisProgram() {
    var digest = new KeyDigest().with(System.getProperty("java.vm.version", ""))
        .with(System.getProperty("java.vm.name", "")).with(System.getProperty("os.arch", ""));
    try {
      String[] places = System.getProperty("java.class.path", "").split(File.pathSeparator, -1);
      add(Path.of(places[0]), digest);
      for (String library : places) {
        addLibrary(Path.of(library), digest);
      }
      return Optional.of(digest.key());
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  /** The program is the first on the class path. */
  private static void add(Path program, KeyDigest digest) throws IOException {
    if (Files.isDirectory(program)) {
      addFolder(program, digest);
    } else {
      addJar(program, digest);
    }
  }

  /** The jars of libraries bear their versions, and are not looked into. */
  private static void addLibrary(Path jar, KeyDigest digest) throws IOException {
    if (Files.isRegularFile(jar)) {
      digest.with(jar.getFileName().toString()).with(Files.size(jar)).with(Files.getLastModifiedTime(jar).toMillis());
    }
  }

  /** Names and checksums are in the directory at the end of a jar, which the JVM has read already. */
  private static void addJar(Path jar, KeyDigest digest) throws IOException {
    try (var zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        digest.with(entry.getName()).with(entry.getCrc());
      }
    }
  }

  private static void addFolder(Path folder, KeyDigest digest) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> all = files.filter(Files::isRegularFile).sorted().toList();
      for (Path file : all) {
        var crc = new CRC32();
        crc.update(Files.readAllBytes(file));
        digest.with(folder.relativize(file).toString()).with(crc.getValue());
      }
    }
  }
}
