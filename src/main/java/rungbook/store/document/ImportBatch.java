package rungbook.store.document;

import java.util.List;
import java.util.SortedMap;

/**
 * A folder or zip as it was read, before anything is saved.
 *
 * @param files what the library can hold, in the order of the paths
 * @param refused what it must not hold; while there is any, nothing is saved
 * @param skipped names of files that are no part of a library, such as a spreadsheet
 */
public record ImportBatch(SortedMap<DocumentPath, byte[]> files, List<Refusal> refused, List<String> skipped) {

  /** A file that was refused: its name as it came, what is wrong, how to put it right. */
  public record Refusal(String name, String says, String hint) {

    /** @param bad names the file itself, which a refusal has as its name */
    public static Refusal of(String name, Refused bad) {
      var named = "`" + name + "` ";
      return new Refusal(name,
          bad.getMessage().startsWith(named) ? bad.getMessage().substring(named.length()) : bad.getMessage(),
          bad.hint());
    }
  }
}
