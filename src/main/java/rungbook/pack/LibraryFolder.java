package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.pack.practice.PracticePage;
import rungbook.pack.style.Assets;
import rungbook.pack.page.Digest;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.Frame;
import rungbook.text.Sha256;
import rungbook.text.UrlPath;

/** A library's packs as one folder: an index with search by complaint, and what a phone needs to keep all of it. */
public final class LibraryFolder {

  private static final String ICON = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 96 96\">"
      + "<rect width=\"96\" height=\"96\" fill=\"#16222c\"/>"
      + "<g transform=\"translate(12 12) scale(3)\" fill=\"none\" stroke=\"#f4f1e7\" stroke-width=\"2\">" + Frame.RUNGS
      + "</g></svg>";

  private static final String MANIFEST = """
      {
        "name": "Rungbook",
        "short_name": "Rungbook",
        "description": "Diagnostic trees, to carry",
        "start_url": "index.html",
        "display": "standalone",
        "background_color": "#f4f1e7",
        "theme_color": "#16222c",
        "icons": [{ "src": "data:image/svg+xml;base64,%s", "sizes": "any", "type": "image/svg+xml" }]
      }
      """.formatted(Base64.getEncoder().encodeToString(ICON.getBytes(StandardCharsets.UTF_8)));

  /** Of a digest: enough to tell two editions on a phone apart. */
  private static final int TWO_GROUPS = 9;

  private LibraryFolder() {}

  /**
   * The packs under their lasting names, {@code index.html}, and {@code sw.js} with its manifest. The index names what
   * is left out.
   *
   * @param practice pages to practice on
   */
  public static List<PackFile> of(List<Pack> packs, List<LeftOut> leftOut, List<PracticePage> practice) {
    List<Pack> sorted = packs.stream().sorted(Comparator.comparing(Pack::tree)).toList();
    var files = new ArrayList<>(sorted.stream().map(Pack::inFolder).toList());
    practice.forEach(page -> files.add(new PackFile(page.fileName(), page.bytes())));
    files.add(new PackFile(FileNames.INDEX, IndexPage.of(sorted, leftOut, practice)));
    files.add(PackFile.text("manifest.webmanifest", MANIFEST));
    files.add(PackFile.text("sw.js", worker(files)));
    return List.copyOf(files);
  }

  /** It has each file's digest, so that any change to any file changes it, which is how a browser learns of it. */
  private static String worker(List<PackFile> files) {
    String list = files.stream()
        .map(file -> "[\"" + UrlPath.part(file.name()) + "\", \"" + Sha256.hex(file.bytes()) + "\"]")
        .collect(Collectors.joining(", ", "[", "]"));
    String name = Sha256.hex(list.getBytes(StandardCharsets.US_ASCII));
    return Assets.WORKER.replace("{name}", Digest.shortened(name))
        .replace("{edition}", Digest.grouped(name).substring(0, TWO_GROUPS)).replace("[\"{files}\"]", list) + "\n";
  }
}
