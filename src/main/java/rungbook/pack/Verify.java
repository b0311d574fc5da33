package rungbook.pack;

import java.util.Optional;

/** Whether a file is a pack as it was written. It tells damage and changes, not who wrote it. */
public final class Verify {

  private Verify() {}

  /** What a file is. */
  public sealed interface Verdict {

    /** Every byte is as it was written. @param digest 64 hexadecimal digits */
    record Intact(String digest) implements Verdict {}

    /** Something was changed. @param claimed what the file says of itself @param found what its bytes give */
    record Altered(String claimed, String found) implements Verdict {}

    record NotAPack() implements Verdict {}
  }

  public static Verdict of(byte[] file) {
    Optional<String> claimed = Digest.claimed(file);
    return claimed.isEmpty() ? new Verdict.NotAPack() : compare(claimed.get(), Digest.of(file), file);
  }

  private static Verdict compare(String claimed, String found, byte[] file) {
    boolean intact = claimed.equals(found) && Digest.isShown(file, found);
    return intact ? new Verdict.Intact(found) : new Verdict.Altered(claimed, found);
  }
}
