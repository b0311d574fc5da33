package rungbook.pack.book;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import rungbook.library.StarterLibrary;
import rungbook.pack.PackedTree;
import rungbook.pack.Samples;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.CircuitFacts;
import rungbook.tree.Tree;

/** Books of the starter library, and of text that wants to be more than text. */
final class BookSamples {

  static final PackInput MATERIAL = new PackInput(Samples.STARTER.shared(), Samples.STARTER.text().pictures());

  /** One point, lossy (from memory; EPUBCheck reads it). */
  private static final String WEBP = "UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA";

  private static final String SVG = """
      <?xml version="1.0"?>
      <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
      <!-- drawn by hand -->
      <svg:svg xmlns:svg="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
          xmlns:maker="https://example.invalid/maker" width="9" height="9" maker:version="1" onload="top.bad = 1">
      <svg:script>top.bad = 1</svg:script><maker:view zoom="2"/>
      <svg:style>@import url(https://example.invalid/a.css);</svg:style>
      <svg:metadata><rdf xmlns="http://www.w3.org/1999/02/22-rdf-syntax-ns#"/></svg:metadata>
      <svg:image xlink:href="https://example.invalid/a.png" width="1" height="1"/>
      <svg:rect id="r" width="9" height="9" fill="url(https://example.invalid/#p)" onclick="top.bad = 1"/>
      <svg:a xlink:href="javascript:top.bad=1"><svg:use xlink:href="#r"/></svg:a>
      <svg:foreignObject><p xmlns="http://www.w3.org/1999/xhtml">words</p></svg:foreignObject>
      </svg:svg>
      """;

  private BookSamples() {}

  static Book starters() {
    return of(Samples.STARTER.trees().stream().map(tree -> tree.tree()).toList());
  }

  static Book starter(String id) {
    return of(List.of(StarterLibrary.tree(id)));
  }

  static Book of(List<Tree> trees) {
    return Book.of(trees.stream().map(BookSamples::chapter).toList(), List.of(), MATERIAL);
  }

  /** Of a starter tree, whose pack is made once for all tests. */
  private static PackedTree chapter(Tree tree) {
    return PackedTree.of(tree, Samples.facts(tree.id()), MATERIAL, Edition.draft());
  }

  static Book hostile() {
    PackInput material = new PackInput(Samples.STARTER.shared(), pictures());
    try (var in = BookSamples.class.getResourceAsStream("/rungbook/pack/book/hostile.md")) {
      Tree tree = Samples.tree(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      PackedTree only = PackedTree.of(tree, CircuitFacts.unknown(), material, Edition.draft());
      return Book.of(List.of(only), List.of(), material);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, byte[]> pictures() {
    return Map.of("trees/a.png", picture("png"), "trees/a.jpg", picture("jpeg"), "trees/a.gif", picture("gif"),
        "trees/a.webp", Base64.getDecoder().decode(WEBP), "trees/a.svg", SVG.getBytes(StandardCharsets.UTF_8),
        "trees/same.png", picture("png"), "trees/no.png", new byte[9],
        "trees/cut.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\">".getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] picture(String kind) {
    try (var out = new ByteArrayOutputStream()) {
      ImageIO.write(new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB), kind, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A book's files, as any zip reader finds them. */
  static Map<String, byte[]> files(Book book) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (var zip = new ZipInputStream(new ByteArrayInputStream(book.bytes()))) {
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        files.put(entry.getName(), zip.readAllBytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  static String text(Book book, String file) {
    return new String(files(book).get("EPUB/" + file), StandardCharsets.UTF_8);
  }
}
