package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.library.CompiledTree;
import rungbook.library.LibraryCompiler;
import rungbook.library.Folder;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.pack.LibraryFolder;
import rungbook.pack.Pack;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.CircuitFacts;
import rungbook.source.Source;
import rungbook.web.views.Search;

/** The index of packs, its script in a browser, finds the same trees in the same order as the server does. */
@Tag("browser")
class SearchAgreementTest {

  private static final List<String> PHRASES = List.of("stops", "stopping", "stop", "top", "ac", "A/C", "a/c buzz", "AC",
      "wont start", "won’t", "WON'T",
      "fan", "fans", "blow", "blower", "heat", "heating", "no heat", "cool", "cooling", "naive", "naïve", "ﬁlter",
      "filter", "straße", "STRASSE",
      "buzzes", "buzzing", "cycles", "trip", "tripping", "no", "x/y/z", "24 V", "of", "off", "2", "thermostat blank",
      "hums", "fuse blows", "ss",
      "ing", "eing", "red", "bed", "ice", "iced", "İ", "nothing like it", "' / ?", "<b>", "a", "e",
      "is the", "furnase", "thermostta blank", "fans fuse", "my house is hot", "tstat dead", "stpos", "zzzzz");

  private static final Map<String, String> ODD = Map.of(
      "a", "The A/C won't stop", "b", "Naïve ﬁlters: fuses blow off", "c", "x/y/z Straße, 24 V at the stops", "d",
      "It buzzes and cycles; bedding iced over",
      "e", "İce on the e/d line", "f", "Back of the access panel");

  @TempDir
  private Path folder;

  @Test
  void bothFindTheSame() throws IOException {
    Library library = library();
    write(LibraryFolder.of(library.trees().stream().map(tree -> pack(library, tree)).toList(), List.of(), List.of()));
    var server = new LinkedHashMap<String, List<String>>();
    var index = new LinkedHashMap<String, List<String>>();
    try (Browser browser = Browser.start()) {
      browser.open(folder.resolve("index.html")).until("document.querySelector('input[type=search]')");
      for (String phrase : PHRASES) {
        server.put(phrase, Search.find(library.trees(), phrase).stream().map(tree -> tree.tree().title()).toList());
        index.put(phrase, found(browser, phrase));
      }
      assertEquals(List.of(), browser.complaints());
    }
    server.replaceAll((phrase, titles) -> titles.size() == library.trees().size() ? List.of("all") : titles);
    index.replaceAll((phrase, titles) -> titles.size() == library.trees().size() ? List.of("all") : titles);
    assertEquals(server, index);
    assertTrue(new HashMap<>(server).values().stream().filter(titles -> !titles.isEmpty()).count() > PHRASES.size() / 2,
        server.toString());
    assertTrue(server.values().contains(List.of()));
  }

  @SuppressWarnings("unchecked")
  private static List<String> found(Browser browser, String phrase) {
    return (List<String>) browser.run(
        """
            const input = document.querySelector('input[type=search]');
            input.value = arguments[0];
            input.dispatchEvent(new Event('input'));
            return [...document.querySelectorAll('.trees li')].filter(li => !li.hidden).map(li => li.querySelector('b').textContent);
            """,
        phrase);
  }

  private static Library library() throws IOException {
    LibraryText starter = Folder.read(Path.of(""));
    var texts = new TreeMap<>(starter.texts());
    ODD.forEach((id, title) -> texts.put("trees/odd-" + id + ".md", new Source("trees/odd-" + id + ".md", """
        ---
        title: "%s"
        complaint: "%s"
        ---

        ## Fine, no stopping

        ```finding
        healthy: yes
        ```
        """.formatted(title, title))));
    return LibraryCompiler.compile(new LibraryText(texts, starter.pictures(), List.of()));
  }

  private static Pack pack(Library library, CompiledTree tree) {
    PackInput material = new PackInput(library.shared(), library.text().pictures());
    return Pack.of(tree.tree(), CircuitFacts.unknown(), material, Edition.draft());
  }

  private void write(List<rungbook.pack.PackFile> files) throws IOException {
    for (var file : files) {
      Files.write(folder.resolve(file.name()), file.bytes());
    }
  }
}
