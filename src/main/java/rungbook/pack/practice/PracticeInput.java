package rungbook.pack.practice;

import java.util.List;
import rungbook.system.SystemVariants;
import rungbook.system.WalkTimes;
import rungbook.tree.Meter;
import rungbook.tree.Tree;

/**
 * What a practice page is made of.
 *
 * @param id of the system, the file's name without {@code .md}
 * @param systems that were read without problems and are small enough to be solved
 * @param meters the usual one first; for what it cannot measure, the next that can
 * @param trees without errors that are for the system
 */
public record PracticeInput(String id, SystemVariants systems, WalkTimes walks, List<Meter> meters, List<Tree> trees) {

  public PracticeInput {
    meters = List.copyOf(meters);
    trees = List.copyOf(trees);
  }
}
