package rungbook.library;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a short run, {@code -Drungbook.short=true}, leaves to a whole one. */
public final class ShortRun {

  public static final boolean IS = Boolean.getBoolean("rungbook.short");

  private ShortRun() {}

  /** All of them; in a short run the first of each so many. */
  public static <T> Stream<T> oneIn(int count, List<T> all) {
    int step = IS ? count : 1;
    return IntStream.range(0, all.size()).filter(i -> i % step == 0).mapToObj(all::get);
  }
}
