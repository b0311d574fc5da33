package rungbook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.net.URI;
import org.junit.jupiter.api.Test;

/** The JDK's own reader of addresses reads back what was written. */
class UrlPathTest {

  @Test
  void everyPartIsReadBackAndSlashesStay() {
    for (String path : new String[] {"trees/no cooling.md", "trees/100 % + ü/a?b#c&d.md", "trees/(a) 'b', c.md"}) {
      assertEquals("/" + path, URI.create("http://localhost/" + UrlPath.of(path)).getPath());
    }
  }

  @Test
  void aPartEncodesItsSlash() {
    assertEquals("a%2Fb%20c", UrlPath.part("a/b c"));
    assertThrows(IllegalArgumentException.class, () -> URI.create("http://localhost/a b"));
  }
}
