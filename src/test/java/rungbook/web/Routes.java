package rungbook.web;

import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every route that the program's classes declare, so that a test of all routes misses none that is added. */
final class Routes {
  private static final java.nio.file.Path COMPILED = java.nio.file.Path.of("target/classes/rungbook/web");

  private Routes() {}

  /** @param path with its templates, such as {@code /api/documents/{path}} */
  record Route(String method, String path, Method handler) {
    boolean isApi() {
      return path.startsWith("/api");
    }

    /** An address on this route. */
    String at(String document) {
      return path.replace("{path}", document).replace("{id}", "1").replaceAll("\\{\\w+}", "no-such");
    }

    /** The address as the manual writes it, each template a word in capitals. */
    String inTheManual() {
      return Pattern.compile("\\{(\\w+)}").matcher(path).replaceAll(name -> name.group(1).toUpperCase(Locale.ROOT));
    }

    @Override
    public String toString() {
      return method + " " + path;
    }
  }

  static List<Route> all() {
    try (var files = Files.walk(COMPILED)) {
      return files.map(file -> COMPILED.relativize(file).toString())
          .filter(name -> name.endsWith(".class") && !name.contains("$")).sorted()
          .map(name -> name.substring(0, name.length() - ".class".length()).replace('/', '.'))
          .map(name -> type("rungbook.web." + name))
          .filter(type -> type.isAnnotationPresent(Path.class)).flatMap(Routes::of).toList();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static Class<?> type(String name) {
    try {
      return Class.forName(name, false, Routes.class.getClassLoader());
    } catch (ClassNotFoundException gone) {
      throw new IllegalStateException(gone);
    }
  }

  private static Stream<Route> of(Class<?> type) {
    return Arrays.stream(type.getDeclaredMethods()).flatMap(handler -> Arrays.stream(handler.getAnnotations())
        .map(annotation -> annotation.annotationType().getAnnotation(HttpMethod.class))
        .filter(java.util.Objects::nonNull)
        .map(verb -> new Route(verb.value(), path(type.getAnnotation(Path.class), handler.getAnnotation(Path.class)),
            handler)));
  }

  private static String path(Path type, Path method) {
    var joined = "/" + type.value() + "/" + (method == null ? "" : method.value());
    var plain = joined.replaceAll("/+", "/").replaceAll("\\{(\\w+):[^}]*}", "{$1}");
    return plain.length() > 1 && plain.endsWith("/") ? plain.substring(0, plain.length() - 1) : plain;
  }
}
