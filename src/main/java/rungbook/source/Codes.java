package rungbook.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The names of the codes that have a page, in alphabetical order. */
public final class Codes {

  private static final String PAGES = "rungbook/rules";
  private static final String END = ".md";
  private static final Set<String> ALL = Collections.unmodifiableSet(find());

  private Codes() {}

  public static Set<String> all() {
    return ALL;
  }

  /** The names of what may be silenced at its place: notes and warnings. */
  public static List<String> silenceable() {
    return ALL.stream().filter(Codes::isSilenceable).toList();
  }

  /** @param name of a code that has a page */
  public static boolean isSilenceable(String name) {
    return Wording.of(Code.of(name)).severity() != Severity.ERROR;
  }

  private static Set<String> find() {
    try {
      var codes = new TreeSet<String>();
      for (URL pages : Collections.list(Codes.class.getClassLoader().getResources(PAGES))) {
        names(pages.openConnection()).filter(name -> name.endsWith(END))
            .forEach(name -> codes.add(name.substring(name.lastIndexOf('/') + 1, name.length() - END.length())));
      }
      return codes;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The files of a folder of classes, or of a jar. */
  private static Stream<String> names(URLConnection pages) throws IOException {
    if (pages instanceof JarURLConnection jar) {
      return jar.getJarFile().stream().map(entry -> entry.getName()).filter(name -> name.startsWith(PAGES));
    }
    try (var listing = pages.getInputStream()) { // a folder reads as its files' names, a line each
      return new String(listing.readAllBytes(), StandardCharsets.UTF_8).lines();
    }
  }
}
