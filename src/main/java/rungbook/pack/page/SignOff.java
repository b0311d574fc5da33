package rungbook.pack.page;

import java.util.List;

/** What a person who worked with the printed pages fills in by hand, after the last step. Common practice, no source. */
final class SignOff {

  private static final List<String> LINES = List.of("Job", "Date", "Found", "Replaced or repaired",
      "Left open, off or tagged", "Done by, license or certificate", "Under the supervision of", "Checked by");

  private SignOff() {}

  static void of(Html html) {
    html.open("section", "class", "signoff").element("h2", "Sign-off");
    LINES.forEach(line -> html.open("p").element("span", line).open("span", "class", "blank").close("span").close("p"));
    html.close("section").line();
  }
}
