package rungbook.store.document;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipException;
import rungbook.source.PictureKind;
import rungbook.store.document.ImportBatch.Refusal;

/** Takes in files one after another, sizes bounded, and finds each its place in the library. */
final class ImportReader {
  private final List<Offered> offered = new ArrayList<>();
  private final Map<NameKey, String> namesByKey = new HashMap<>();
  private final List<Refusal> refused = new ArrayList<>();
  private final List<String> skipped = new ArrayList<>();
  private long bytesTogether;

  private record Offered(String name, byte[] bytes) {}

  /** A file's bytes, opened only when they are wanted. */
  interface Content {
    InputStream open() throws IOException;
  }

  /**
   * Reads one file, if it is part of a library.
   *
   * @param name its path in the folder or zip, with either slash
   * @return whether there is room for more
   */
  boolean offer(String name, Content content) throws IOException {
    var path = name.replace('\\', '/');
    if (leadsOut(path)) {
      return refuse(name, "would be written outside the library",
          "make the zip again from inside the library's folder");
    }
    if (!belongs(path)) {
      skipped.add(name);
      return true;
    }
    return read(path, content);
  }

  private boolean read(String path, Content content) throws IOException {
    var limit = path.endsWith(".md") ? StoreLimits.TEXT : StoreLimits.PICTURE;
    try (var in = content.open()) {
      return take(path, limit, in.readNBytes(limit + 1));
    } catch (ZipException | EOFException damaged) {
      bytesTogether += limit; // how much was unpacked until then is not known
      return refuse(path,
          damaged instanceof ZipException bad && bad.getMessage() != null ? bad.getMessage() : "is damaged in the zip",
          "make the zip again, and see that it is copied whole") && bytesTogether <= StoreLimits.TOGETHER;
    }
  }

  private boolean take(String path, int limit, byte[] bytes) {
    bytesTogether += bytes.length;
    if (bytesTogether > StoreLimits.TOGETHER || offered.size() == StoreLimits.FILES_COUNT) {
      refuse(path, "is one too many: an import holds at most " + StoreLimits.FILES_COUNT + " files and "
          + (StoreLimits.TOGETHER >> 20) + " MB", "import the library in parts");
      return false;
    }
    if (bytes.length > limit) {
      return refuse(path, "is larger than " + (limit >> 20) + " MB", "split the text, or save the picture smaller");
    }
    offered.add(new Offered(path, bytes));
    return true;
  }

  private boolean refuse(String name, String says, String hint) {
    refused.add(new Refusal(name, says, hint));
    return true;
  }

  private static boolean leadsOut(String path) {
    return path.startsWith("/") || path.matches("[A-Za-z]:.*") || List.of(path.split("/")).contains("..");
  }

  private static boolean belongs(String path) {
    var hidden = List.of(path.split("/")).stream().anyMatch(part -> part.startsWith(".") || part.equals("__MACOSX"));
    return !hidden && (path.toLowerCase(Locale.ROOT).endsWith(".md") || PictureKind.of(path).isPresent());
  }

  /** Everything read so far. */
  ImportBatch finish() {
    var files = new TreeMap<DocumentPath, byte[]>();
    var hasRooms = offered.stream().anyMatch(file -> roomAt(file.name()) >= 0);
    offered.forEach(file -> place(file.name(), file.bytes(), hasRooms, files));
    return new ImportBatch(files, List.copyOf(refused), List.copyOf(skipped));
  }

  private void place(String name, byte[] bytes, boolean hasRooms, Map<DocumentPath, byte[]> files) {
    if (hasRooms && roomAt(name) < 0) {
      skipped.add(name);
      return;
    }
    try {
      var path = new DocumentPath(composed(hasRooms ? name.substring(roomAt(name)) : "trees/" + name));
      requireText(path, bytes);
      requireAlone(path, name);
      Signature.refusal(path, bytes).ifPresentOrElse(bad -> refuse(name, bad.says(), bad.hint()),
          () -> files.put(path, bytes));
    } catch (Refused bad) {
      refused.add(Refusal.of(name, bad));
    } catch (CharacterCodingException notText) {
      refuse(name, "is not UTF-8 text", "save it as UTF-8 and import it again");
    }
  }

  // macOS writes accents in file names as characters of their own
  private static String composed(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFC);
  }

  private void requireAlone(DocumentPath path, String name) {
    var other = namesByKey.putIfAbsent(NameKey.of(path), name);
    if (other != null) {
      throw new Refused("would be the same document as `" + other + "`", "leave one of them out, or rename it");
    }
  }

  /** Where `trees/`, `shared/` or `company.md` begins in a name, below any other folders; -1 if nowhere. */
  private static int roomAt(String name) {
    for (var room : List.of("trees/", "shared/", "company.md")) {
      if (name.startsWith(room)) {
        return 0;
      }
    }
    var folder = name.indexOf('/');
    var below = folder < 0 ? -1 : roomAt(name.substring(folder + 1));
    return below < 0 ? -1 : below + folder + 1;
  }

  private static void requireText(DocumentPath path, byte[] bytes) throws CharacterCodingException {
    if (!path.isPicture()) {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
    }
  }
}
