package rungbook.pack.onefile;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.pack.page.TreeText;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The anchors of the steps of many trees. Each is five letters of a hash of the tree's and the step's id: short, since
 * there are thousands of links; and the same in the next edition, or gone from it, so that an old address never shows
 * another step. {@code trees.js} computes it too, so that {@code #no-cooling--read-y} leads to the step.
 */
final class ShortAnchors {

  private static final String LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
  private static final int LENGTH = 5;

  // FNV-1a with 32 bits; both constants from memory, checked against published values of the hash
  private static final int OFFSET = 0x811C9DC5;
  private static final int PRIME = 0x01000193;

  private final Map<String, String> byName = new HashMap<>();
  private final Map<String, String> first = new HashMap<>();

  ShortAnchors(List<Tree> trees) {
    Set<String> used = new HashSet<>();
    trees.forEach(tree -> used.add(tree.id()));
    for (Tree tree : trees) {
      first.put(tree.id(), TreeText.first(tree));
      for (Step step : tree.steps()) {
        String name = name(tree.id(), step.id());
        byName.put(name, used.add(hash(name)) ? hash(name) : name);
      }
    }
  }

  /** @param place a step's id, or a place of the page that begins with a colon */
  String of(String tree, String place) {
    String name = name(tree, place);
    return place.equals(":start") ? tree : byName.getOrDefault(name, name);
  }

  boolean has(String tree) {
    return first.containsKey(tree);
  }

  /** Of the step that a tree begins with. */
  String first(String tree) {
    return of(tree, first.getOrDefault(tree, ""));
  }

  private static String name(String tree, String place) {
    return tree + "--" + place;
  }

  static String hash(String name) {
    int hash = OFFSET;
    for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
      hash = (hash ^ (b & 0xFF)) * PRIME;
    }
    var letters = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH; i++) {
      letters.append(LETTERS.charAt((hash >>> (6 * i)) & 63));
    }
    return letters.toString();
  }
}
