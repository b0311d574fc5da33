package rungbook.pack.onefile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortMarkupTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "<a class=\"way\" href=\"#a1.2\">x</a> | <a class=way href=#a1.2>x</a>",
      "<a class=\"way good\" title=\"\">x=\"y\" z</a> | <a class=\"way good\" title=\"\">x=\"y\" z</a>",
      "<path class=\"red\"/><path d=\"M1\" class=\"b\"/> | <path class=\"red\"/><path d=M1 class=\"b\"/>",
      "<ul><li>a</li><li>b</li></ul> | <ul><li>a<li>b</ul>", "<p>a</p><p>b</p> c | <p>a<p>b</p> c",
      "<p>a</p> <p>b</p></div> | <p>a <p>b</div>", "<div><dt>a</dt><dd>b</dd></div> | <div><dt>a<dd>b</div>",
      "<a href=\"a&amp;b\">c</a> | <a href=\"a&amp;b\">c</a>"})
  void whatABrowserPutsBackIsLeftOut(String written, String shortened) {
    assertEquals(shortened, ShortMarkup.of(written));
  }

  /** Between words in one line of prose it is a space. */
  @Test
  void lineEndsBetweenBlocksAreLeftOut() {
    assertEquals("<div><ul><li>a\nb</ul><p><b>R</b>\n<b>C</b></div>",
        ShortMarkup.of("<div>\n<ul>\n<li>a\nb</li>\n</ul>\n<p><b>R</b>\n<b>C</b></p>\n</div>"));
  }
}
