package rungbook.pack.page;

import java.util.Optional;
import rungbook.pack.circuit.CircuitPictures;
import rungbook.system.SystemVariants;
import rungbook.tree.Tree;

/** The kind of file that a tree is written into: what it is called, and what a link or a picture in it can lead to. */
public interface Medium {

  /** Whether a tree has a file or chapter for itself: its title is at the top, and all that it names is in full. */
  boolean isAlone();

  /** How a caution is at a step where it was read before. */
  enum Repeated {
    /** With its words in sight, where a page cannot open a bar. */
    OPEN,
    /** With its words behind a bar. */
    FOLDED,
    /** A bar that leads to its words. */
    LINK
  }

  Repeated repeated();

  /** Writes the title block, and how somebody checks the file where that is not said elsewhere in it. */
  void about(Html html, Tree tree, Edition edition);

  /**
   * The anchor of a place of a tree.
   *
   * @param place a step's id; with a colon, a place of the page itself
   */
  default String anchor(String tree, String place) {
    return place;
  }

  /**
   * The address of another tree, or of a step of it.
   *
   * @param step its id; empty for the tree's first page
   * @return empty if that tree cannot be reached from here
   */
  Optional<String> address(String tree, Optional<String> step);

  /** Where the other tree is, in words. */
  String whereabouts(String tree);

  /** The pictures of a system's circuit; where trees share a file, the same for all trees on the system. */
  CircuitPictures circuit(SystemVariants systems);

  /**
   * The address of a picture.
   *
   * @param path in the library
   * @return empty if there is none
   */
  Optional<String> picture(String path);
}
