package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rungbook.pack.page.Digest;
import rungbook.pack.page.Edition;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.PackInput;
import rungbook.pack.page.PackPage;
import rungbook.pack.page.PageForm;
import rungbook.proof.CircuitFacts;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A tree's pack.
 *
 * @param tree the tree's id
 * @param steps the titles of its steps
 * @param digest 64 hexadecimal digits
 * @param bytes the file; do not modify
 */
public record Pack(String tree, String title, String complaint, List<String> steps, String digest, byte[] bytes) {

  /**
   * Packs a sound tree; whether it is sound, the library knows.
   *
   * @param facts what its circuit says of its steps, as far as it is known
   * @throws IllegalArgumentException if one of its ways leads nowhere
   */
  public static Pack of(Tree tree, CircuitFacts facts, PackInput material, Edition edition) {
    String page = PackPage.of(tree, facts, material, edition);
    PageForm blank = PageForm.of(page.getBytes(StandardCharsets.UTF_8)).orElseThrow();
    String digest = blank.computed();
    List<String> steps = tree.steps().stream().map(Step::title).toList();
    return new Pack(tree.id(), tree.title(), tree.complaint(), steps, digest, blank.with(digest));
  }

  /** The start of the digest in groups, as people compare it. */
  public String shortDigest() {
    return Digest.grouped(digest);
  }

  /** As a file that travels alone, its short digest in its name. */
  public PackFile alone() {
    return new PackFile(FileNames.alone(tree, digest), bytes);
  }

  /** As a file among others in a folder, under its lasting name. */
  public PackFile inFolder() {
    return new PackFile(FileNames.inFolder(tree), bytes);
  }
}
