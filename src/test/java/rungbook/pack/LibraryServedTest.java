package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.browser.Browser;
import rungbook.library.StarterLibrary;
import rungbook.pack.page.Edition;

/** A phone keeps a folder from a server: whole, or as it was before. */
@Tag("browser")
class LibraryServedTest {

  private static final String ID = "no-cooling-blower-runs";

  private static final String KEPT = "/3 of 3 files kept on this phone, edition [0-9a-f]{4} [0-9a-f]{4}\\./.test("
      + "document.body.innerText)";

  /** What a small folder says on the screen. */
  private static String says(String words) {
    return "document.body.innerText.includes('" + words + "')";
  }

  @Test
  void wholeLibraryOpensAfterTheServerIsGone() throws IOException {
    try (var folder = new ServedFolder(LibraryFolder.of(Samples.starters(), List.of(), Samples.practice()));
        Browser browser = Browser.start()) {
      browser.open(folder.root()).until(says("It opens without a signal"));
      assertEquals(List.of(), browser.complaints());
      folder.close();
      browser.open(folder.root() + "index.html").until("document.title == 'Rungbook library'");
      browser.find(".trees .way").click();
      browser.until("document.querySelector('.begin')");
      assertTrue(browser.find("h1").isDisplayed());
    }
  }

  /** The worker of the new edition is on the server before its packs, then one pack, then all. */
  @Test
  void halfCopiedFolderLeavesTheOldEditionWholeUntilTheNewOneIs() throws IOException {
    List<PackFile> old = edition("1");
    List<PackFile> fresh = edition("2");
    try (var folder = new ServedFolder(old); Browser browser = Browser.start()) {
      browser.open(folder.root()).until(KEPT);
      folder.copy(named(fresh, "sw.js"));
      browser.open(folder.root())
          .until(says("A newer edition was not kept, because " + ID + ".html on the server is of another edition"));
      assertTrue((boolean) browser.run("return " + KEPT));
      folder.copy(named(fresh, ID + ".html"));
      browser.open(folder.root()).until(says("A newer edition was not kept, because index.html"));
      assertEquals("1", revision(browser, folder));
      folder.copy(fresh);
      browser.open(folder.root()).until(says("A newer edition is here. Take it after this job"));
      assertEquals("1", revision(browser, folder));
      browser.open(folder.root()).until("document.querySelector('main button')");
      browser.find("main [role=status] button").click();
      browser.until("!document.querySelector('main [role=status] button') && " + KEPT);
      assertEquals("2", revision(browser, folder));
    }
  }

  @Test
  void folderThatIsNotWholeAtTheFirstVisitIsNotSaidToBeKept() throws IOException {
    List<PackFile> whole = edition("1");
    try (var folder = new ServedFolder(whole.stream().filter(file -> !file.name().equals(ID + ".html")).toList());
        Browser browser = Browser.start()) {
      browser.open(folder.root())
          .until(says("Not kept on this phone, because the server has no " + ID + ".html (404)"));
      folder.copy(whole);
      browser.open(folder.root()).until(KEPT);
    }
  }

  private static String revision(Browser browser, ServedFolder folder) {
    browser.open(folder.root() + ID + ".html").until("document.querySelector('.block')");
    return (String) browser.run("return [...document.querySelectorAll('.block div')].filter(function (cell) {"
        + " return cell.firstChild.textContent === 'Revision'; })[0].lastChild.textContent");
  }

  private static List<PackFile> named(List<PackFile> files, String name) {
    return files.stream().filter(file -> file.name().equals(name)).toList();
  }

  /** A pack, the index, the manifest and the worker. */
  private static List<PackFile> edition(String revision) {
    var edition = new Edition(Optional.of(revision), Optional.of(LocalDate.of(2026, 3, 4)), Optional.empty());
    return LibraryFolder.of(List.of(Samples.pack(StarterLibrary.tree(ID), edition)), List.of(), List.of());
  }
}
