package rungbook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungbook.source.Wording;

/** The codes that have a page. */
final class Codes {

  private static final String PAGES = "rungbook/rules";

  private Codes() {}

  static List<String> all() {
    try {
      var codes = new TreeSet<String>();
      for (URL pages : Collections.list(Wording.class.getClassLoader().getResources(PAGES))) {
        codes.addAll(at(pages.toURI()));
      }
      return List.copyOf(codes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> at(URI pages) throws IOException {
    if (!pages.getScheme().equals("jar")) {
      return list(Path.of(pages));
    }
    try (FileSystem jar = FileSystems.newFileSystem(pages, Map.of())) {
      return list(jar.getPath(PAGES));
    }
  }

  private static List<String> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".md"))
          .map(name -> name.substring(0, name.length() - ".md".length())).toList();
    }
  }
}
