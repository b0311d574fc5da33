package rungbook.rules.flow;

import java.util.Locale;

/**
 * Whether an answer means that a task succeeded. The first answer does unless it contains a denial; the others only if
 * they contain a success word: {@code dead}, {@code done}, {@code flat}, {@code proved}, {@code yes}.
 */
public final class Success {

  private static final String[] DENIALS = {"not ", "cannot", "can't", "still", "fail", "unable"};
  private static final String[] CLAIMS = {"dead", "done", "flat", "proved", "yes"};

  private Success() {}

  /** @param way the way's index among the task's ways */
  public static boolean isMeant(String answer, int way) {
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
