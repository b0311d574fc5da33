package rungbook.pack.onefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungbook.pack.Samples;
import rungbook.tree.Tree;

class ShortAnchorsTest {

  /** Published values of FNV-1a with 32 bits, from memory: {@code a} is e40c292c, {@code foobar} is bf9cf968. */
  @Test
  void hashIsThatOfTheReference() {
    assertEquals(letters(0xE40C292C), ShortAnchors.hash("a"));
    assertEquals(letters(0xBF9CF968), ShortAnchors.hash("foobar"));
    assertEquals(letters(0x811C9DC5), ShortAnchors.hash(""));
  }

  private static String letters(int hash) {
    return IntStream.range(0, 5).mapToObj(i -> String.valueOf(
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_".charAt(hash >>> 6 * i & 63)))
        .reduce("", String::concat);
  }

  /** A step that is renamed gets another anchor, and no other step gets the old one. */
  @Test
  void anchorsLastFromEditionToEdition() {
    Tree old = tree("Old");
    Tree renamed = tree("New");
    ShortAnchors before = new ShortAnchors(List.of(old));
    ShortAnchors after = new ShortAnchors(List.of(renamed));
    assertEquals(before.of("sample", "fine"), after.of("sample", "fine"));
    assertNotEquals(before.of("sample", "old"), after.of("sample", "new"));
    assertEquals("sample", before.of("sample", ":start"));
    assertEquals(before.of("sample", "old"), before.first("sample"));
  }

  /** Two names that hash alike, found by a search: the second keeps its long name. */
  @Test
  void twoStepsNeverShareAnAnchor() {
    Set<String> seen = new HashSet<>();
    List<Tree> trees = Libraries.trees();
    ShortAnchors anchors = new ShortAnchors(trees);
    trees.forEach(tree -> tree.steps().forEach(step -> assertEquals(true, seen.add(anchors.of(tree.id(), step.id())))));
  }

  private static Tree tree(String first) {
    return Samples.tree("""
        ---
        title: T
        complaint: C
        ---

        ## %s

        ```task
        minutes: 1
        ```

        Do it.

        - done: [Fine](#fine)

        ## Fine

        ```finding
        healthy: yes
        ```
        """.formatted(first));
  }
}
