package rungbook.store.document;

import java.util.List;
import java.util.SortedMap;

/**
 * What was read from a folder or zip, before anything is saved.
 *
 * @param files what the library can hold, in the order of the paths
 * @param refused what it must not hold; while there is any, nothing is saved
 * @param skipped names of files that are no part of a library, such as a spreadsheet
 */
public record ImportBatch(SortedMap<DocumentPath, byte[]> files, List<Refusal> refused, List<String> skipped) {

  /** A file that was refused: its name in the archive, what is wrong, how to fix it. */
  public record Refusal(String name, String says, String hint) {

    /** @param bad names the file itself, which a refusal has as its name */
    public static Refusal of(String name, Refused bad) {
      var named = "`" + name + "` ";
      return new Refusal(name,
          bad.says().startsWith(named) ? bad.says().substring(named.length()) : bad.says(),
          bad.hint());
    }
  }
}
