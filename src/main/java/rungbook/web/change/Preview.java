package rungbook.web.change;

import java.util.List;
import rungbook.web.views.Difference;
import rungbook.web.views.ProblemView;

/**
 * What a change would do to the library.
 *
 * @param texts whose words change; without those that only get another name
 * @param added the errors that the check would find and does not find now; at most {@link #MOST_SHOWN}
 * @param moreAdded how many more of them
 * @param digest of everything that would be saved, so that only what was looked at is done
 */
public record Preview(List<ChangedText> texts, List<ProblemView> added, int moreAdded, String digest) {

  static final int MOST_SHOWN = 10;

  /** @param path before the change */
  public record ChangedText(String path, String href, List<Difference.Line> difference) {}
}
