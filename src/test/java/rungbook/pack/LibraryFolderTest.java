package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.pack.page.FileNames;

class LibraryFolderTest {

  private final List<Pack> packs = Samples.starters();
  private final List<PackFile> files = LibraryFolder.of(packs, List.of(), Samples.practice());

  @Test
  void samePacksGiveSameFilesInWhateverOrder() {
    var backwards = packs.stream().sorted((one, other) -> other.tree().compareTo(one.tree())).toList();
    assertEquals(texts(files), texts(LibraryFolder.of(backwards, List.of(), Samples.practice())));
  }

  @Test
  void indexListsEveryTreeByItsComplaint() {
    String index = Samples.text(file("index.html"));
    packs.forEach(pack -> assertTrue(
        index.contains(pack.complaint()) && index.contains("href=\"" + pack.inFolder().name() + "\""), pack.tree()));
    assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(file("index.html").bytes()));
  }

  @Test
  void indexNamesWhatIsLeftOutAndWhy() {
    var half = new LeftOut("trees/half.md", "Half <done>", "line 12: no step is called `b`");
    var withIt = LibraryFolder.of(packs, List.of(half), List.of());
    var index = withIt.stream().filter(file -> file.name().equals("index.html")).findFirst().orElseThrow();
    assertTrue(Samples.text(index).contains("<b>Half &lt;done&gt;</b> (<code>trees/half.md</code>): "
        + "line 12: no step is called <code>b</code>"), Samples.text(index));
    assertTrue(!Samples.text(file("index.html")).contains("Left out"));
    assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(index.bytes()));
  }

  @Test
  void linksBetweenPacksLeadToFilesOfTheFolder() {
    Set<String> names = files.stream().map(PackFile::name).collect(Collectors.toSet());
    var links = files.stream().filter(file -> file.name().endsWith(".html"))
        .flatMap(file -> Pattern.compile("href=\"(?!data:)([^#\":]+)").matcher(Samples.text(file)).results())
        .map(found -> URLDecoder.decode(found.group(1), StandardCharsets.UTF_8)).collect(Collectors.toSet());
    assertTrue(links.size() > packs.size() / 2 && names.containsAll(links), links.toString());
  }

  @Test
  void workerKeepsEveryFile() {
    String worker = Samples.text(file("sw.js"));
    files.stream().map(PackFile::name).filter(name -> !name.equals("sw.js"))
        .forEach(name -> assertTrue(worker.contains("\"" + name + "\""), name));
  }

  @Test
  void workerChangesWithAnyPack() {
    String before = Samples.text(file("sw.js"));
    var fewer = LibraryFolder.of(packs.subList(1, packs.size()), List.of(), List.of()).stream()
        .filter(file -> file.name().equals("sw.js"))
        .findFirst().orElseThrow();
    assertNotEquals(name(before), name(Samples.text(fewer)));
  }

  private static String name(String worker) {
    Matcher name = Pattern.compile("rungbook-[0-9a-f]{8,}").matcher(worker);
    assertTrue(name.find(), worker);
    return name.group();
  }

  @Test
  void treeCalledIndexLeavesTheIndexAlone() {
    assertEquals("Index.tree.html", FileNames.inFolder("Index"));
    assertNotEquals(FileNames.inFolder("index"), FileNames.inFolder("index.tree"));
    assertEquals("kein%20Strom%20%C3%BC.html", FileNames.address("kein Strom ü"));
  }

  private PackFile file(String name) {
    return files.stream().filter(file -> file.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> texts(List<PackFile> files) {
    return files.stream().map(file -> file.name() + Arrays.hashCode(file.bytes()) + Samples.text(file)).toList();
  }
}
