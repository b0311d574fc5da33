package rungbook.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A file that nobody should have written.
 *
 * @param expected the place and problem that a report has to hold, {@code 3:1: error not-utf8}; empty if the file is
 * sound
 * @param beside other files in its folder
 */
record Hostile(String name, byte[] bytes, String expected, Map<String, byte[]> beside) {

  private static final String PICTURE = Texts.SOUND.replace("## Works", "![the board](%s)\n\n## Works");

  static final List<Hostile> CASES = List.of(
      of("not UTF-8", bytes("---\ntitle: caf\u00E9\n", "ISO-8859-1"), "2:11: error not-utf8"),
      of("UTF-16", bytes(Texts.SOUND, "UTF-16"), "1:1: error not-utf8"),
      of("byte order mark", "\uFEFF" + Texts.SOUND, ""),
      of("CRLF", Texts.SOUND.replace("\n", "\r\n"), ""),
      of("tabs in prose and list", Texts.SOUND.replace("- yes:", "\tan example\n\n-\tyes:"), ""),
      of("tab in a block", Texts.SOUND.replace("look: status light", "\tlook: status light"), "9:1: error not-yaml"),
      of("empty", "", "1:1: error file-empty"),
      of("only spaces", " \n\t\n", "1:1: error file-empty"),
      of("no characters but NUL", "\0".repeat(1000), "1:1: error key-missing"),
      of("10 MB", "a line of prose\n".repeat(655_360), "1:1: error file-too-large"),
      of("4 MB of prose", Texts.SOUND + "a line of prose\n\n".repeat(240_000), "99989:1: error text-too-long"),
      of("one line of 3 MB", "x".repeat(3_000_000), "1:1: error paragraph-too-long"),
      of("10,000 quotes in each other", ">".repeat(10_000) + " deep\n", "1:1: error nested-too-deep"),
      of("10,000 lists on one line", "- ".repeat(10_000) + "deep\n", "1:1: error nested-too-deep"),
      of("lists in lists, line by line", nested(10_000), "65:1: error nested-too-deep"),
      of("10,000 open brackets", "[".repeat(10_000) + "\n", "1:1: error paragraph-too-long"),
      of("emphasis without end", "*a **b ".repeat(2_000) + "\n", "1:1: error paragraph-too-long"),
      of("100,000 headings", Texts.SOUND + "\n## Chapter\n".repeat(100_000), "4018:1: error text-too-long"),
      of("alias bomb", bomb(), "3:1: error line-not-plain"),
      of("unknown key", Texts.SOUND.replace("look:", "loook:"), "9:1: error unknown-key"),
      of("heading twice", Texts.SOUND + "\n## Works\n\n```finding\nhealthy: yes\n```\n", "28:4: error heading-twice"),
      of("heading with emphasis",
          Texts.SOUND.replace("## Works", "## It *really* `works`").replace("#works", "#it-really-works"), ""),
      of("heading in another script",
          Texts.SOUND.replace("## Works", "## 正常 работает").replace("#works", "#正常-работает"), ""),
      of("link with a space", Texts.SOUND.replace("(#works)", "(#is it lit)"), "12:1: error link-with-space"),
      of("HTML and script", Texts.SOUND + "\n<script>alert(1)</script>\n\n<img src=x onerror=alert(1)>\n",
          "28:1: note html-shown-as-text"),
      of("picture missing", PICTURE.formatted("gone.png"), "15:1: error picture-missing"),
      of("picture outside", PICTURE.formatted("../../etc/board.png"), "15:1: error picture-outside"),
      of("picture from an address", PICTURE.formatted("http://127.0.0.1/board.png"), "15:1: error picture-outside"),
      new Hostile("picture oversized", bytes(PICTURE.formatted("big.png"), "UTF-8"), "15:1: error picture-too-large",
          Map.of("big.png", new byte[3 * 1024 * 1024])));

  private static Hostile of(String name, String text, String expected) {
    return of(name, text.getBytes(StandardCharsets.UTF_8), expected);
  }

  private static Hostile of(String name, byte[] bytes, String expected) {
    return new Hostile(name, bytes, expected, Map.of());
  }

  private static byte[] bytes(String text, String charset) {
    return text.getBytes(java.nio.charset.Charset.forName(charset));
  }

  private static String nested(int depth) {
    var text = new StringBuilder();
    for (int i = 0; i < Math.min(depth, 1000); i++) {
      text.append("  ".repeat(i)).append("- deep\n");
    }
    return text.toString();
  }

  /** The billion laughs, in front matter. */
  private static String bomb() {
    var text = new StringBuilder("---\na: &a [lol, lol, lol, lol, lol, lol, lol, lol, lol]\n");
    for (char c = 'b'; c <= 'i'; c++) {
      String before = "*" + (char) (c - 1);
      text.append(c).append(": &").append(c).append(" [")
          .append(String.join(", ", java.util.Collections.nCopies(9, before))).append("]\n");
    }
    return text.append("---\n").append(Texts.SOUND).toString();
  }
}
