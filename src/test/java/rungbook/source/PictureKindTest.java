package rungbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PictureKindTest {

  @Test
  void endingInAnyCaseTellsTheKind() {
    assertEquals(Optional.of(PictureKind.JPEG), PictureKind.of("trees/pictures/a.b.JPEG"));
    assertEquals(Optional.of(PictureKind.SVG), PictureKind.of("a.svg"));
    assertEquals(Optional.empty(), PictureKind.of("a.svgz"));
    assertEquals(Optional.empty(), PictureKind.of("png/a"));
  }

  /** The JDK knows the media types of the older kinds. */
  @Test
  void mediaTypesAreTheRegisteredOnes() {
    for (PictureKind kind : List.of(PictureKind.PNG, PictureKind.JPEG, PictureKind.GIF)) {
      assertEquals(URLConnection.guessContentTypeFromName("a." + kind.ending()), kind.mediaType());
    }
  }

  @Test
  void peopleAreToldOneEndingAKind() {
    assertEquals("`.png`, `.jpg`, `.gif`, `.webp` or `.svg`", PictureKind.endingsInWords());
    assertEquals(".png,.jpg,.jpeg,.gif,.webp,.svg", PictureKind.filter());
  }

  /** Nothing else in the program lists the kinds. */
  @Test
  void noOtherFileListsThem() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main"))) {
      List<Path> others = files.filter(Files::isRegularFile)
          .filter(file -> !file.toString().contains("vendor") && !file.toString().contains("node_modules"))
          .filter(file -> text(file).contains("webp") && text(file).contains("gif")).toList();
      assertEquals(List.of(Path.of("src/main/java/rungbook/source/PictureKind.java")), others);
    }
  }

  private static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
