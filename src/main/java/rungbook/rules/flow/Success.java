package rungbook.rules.flow;

import java.util.Locale;

/**
 * Whether a task's way on says that the task came about. Its first way does, unless it denies it; a later one does if
 * it says so: {@code dead}, {@code done}, {@code flat}, {@code proved}, {@code yes}.
 */
final class Success {

  private static final String[] DENIALS = {"not ", "cannot", "can't", "still", "fail", "unable"};
  private static final String[] CLAIMS = {"dead", "done", "flat", "proved", "yes"};

  private Success() {}

  /** @param way the way's place among the task's ways, from 0 */
  static boolean isMeant(String answer, int way) {
    String words = answer.toLowerCase(Locale.ROOT).replace("not live", "dead");
    return !words.equals("no") && !words.equals("live") && !holdsOne(words, DENIALS)
        && (way == 0 || holdsOne(words, CLAIMS));
  }

  private static boolean holdsOne(String words, String[] some) {
    for (String one : some) {
      if (words.contains(one)) {
        return true;
      }
    }
    return false;
  }
}
