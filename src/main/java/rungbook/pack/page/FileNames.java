package rungbook.pack.page;

import rungbook.text.UrlPath;

/**
 * What packs are called. In a folder a pack has a lasting name, so that links between packs hold and a newer edition
 * takes the older one's place; a pack that travels alone carries its short digest in its name.
 */
public final class FileNames {

  public static final String INDEX = "index.html";

  /** What a library in one file calls itself. */
  public static final String LIBRARY = "all-trees.html";

  public static final String ENDING = ".html";

  private static final String PRACTICE = "practice-";

  private static final String CARD = "card-";

  private FileNames() {}

  /** The name in a folder: {@code no-cooling.html}. */
  public static String inFolder(String tree) {
    return stem(tree) + ENDING;
  }

  /**
   * The name of a pack that travels alone: {@code no-cooling-3f2a91bc77d01e425a6b9c0d.html}.
   *
   * @param digest the whole digest
   */
  public static String alone(String tree, String digest) {
    return stem(tree) + "-" + Digest.shortened(digest) + ENDING;
  }

  /** The name of the page to practice on a system: {@code practice-heat-pump.html}. */
  public static String ofPractice(String system) {
    return PRACTICE + system + ENDING;
  }

  /** The name of a system's pocket card: {@code card-heat-pump.html}. */
  public static String ofCard(String system) {
    return CARD + system + ENDING;
  }

  /** The address of a tree's pack from a pack in the same folder. */
  public static String address(String tree) {
    return UrlPath.part(inFolder(tree));
  }

  /** The names of the lists are taken, in capitals too: many phones do not tell them apart. */
  private static String stem(String tree) {
    String file = tree + ENDING;
    return file.equalsIgnoreCase(INDEX) || file.equalsIgnoreCase(LIBRARY) || tree.endsWith(".tree")
        || tree.regionMatches(true, 0, PRACTICE, 0, PRACTICE.length()) ? tree + ".tree" : tree;
  }
}
