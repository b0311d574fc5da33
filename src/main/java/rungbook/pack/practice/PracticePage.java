package rungbook.pack.practice;

import java.nio.charset.StandardCharsets;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.Frame;
import rungbook.pack.page.Html;
import rungbook.pack.page.PageForm;
import rungbook.pack.page.TitleBlock;
import rungbook.pack.style.PracticeAssets;
import rungbook.text.UrlPath;

/**
 * A page to practice on a system.
 *
 * @param system the system's id
 * @param digest 64 hexadecimal digits
 * @param bytes the file; do not modify
 */
public record PracticePage(String system, String title, String digest, byte[] bytes) {

  public static PracticePage of(PracticeInput input) {
    String title = input.systems().base().vocabulary().title();
    Html html = new Html();
    Frame.head(html, "Practice: " + title, PracticeAssets.STYLE, PracticeAssets.SCRIPT, "");
    html.open("body", "data-file", FileNames.ofPractice(input.id())).line();
    TitleBlock.head(html, title,
        "Practice: find a hidden fault with a meter. It is a simulation, and it is no training in safe work.");
    Frame.bar(html);
    html.open("main");
    html.element("p", "This page simulates a circuit, and needs scripts for it. Scripts are off here, or this browser "
        + "cannot run them: open the file in another browser.", "id", "plain");
    html.open("div", "id", "practice", "data-system", input.id()).close("div").line();
    html.open("template", "id", "data").raw(new PracticeData(input).json()).close("template").line();
    TitleBlock.ofIndex(html);
    html.close("main").line();
    Frame.foot(html, PracticeAssets.SCRIPT);
    PageForm blank = PageForm.of(html.toString().getBytes(StandardCharsets.UTF_8)).orElseThrow();
    String digest = blank.computed();
    return new PracticePage(input.id(), title, digest, blank.with(digest));
  }

  /** The file's name among the packs of a folder. */
  public String fileName() {
    return FileNames.ofPractice(system);
  }

  /** Its address from a page in the same folder. */
  public String address() {
    return UrlPath.part(fileName());
  }
}
