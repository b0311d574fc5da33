package rungbook.pack.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinifiedTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
      "a , b > c { color : red ; margin: 0 -1px; }|a,b>c{color :red;margin:0 -1px}",
      "a :hover { width: calc(1px + 2 * var(--x)) !important; }|a :hover{width:calc(1px + 2 * var(--x))!important}",
      "a::before { content: \"a  { } /* b */ \\\" ;\" ; }|a::before{content:\"a  { } /* b */ \\\" ;\"}",
      "/* one */ a { /* two */ } /* three */|a{}",
      "@media (min-width: 40rem) and (max-width: 50rem) { a { b: c } }|@media (min-width:40rem) and "
          + "(max-width:50rem){a{b:c}}",
      "a { content: ' ; ' }|a{content:' ; '}"})
  void styleLosesWhatMeansNothing(String css, String minified) {
    assertEquals(minified, Minified.style(css));
  }

  @Test
  void minifiedStyleStaysAsItIs() {
    assertEquals(Assets.PACK_STYLE, Minified.style(Assets.PACK_STYLE));
    assertFalse(
        Assets.PACK_STYLE.contains("/*") || Assets.PACK_STYLE.contains("palette") || Assets.PACK_STYLE.contains("\n"));
    assertTrue(Assets.PACK_STYLE.contains("content:\"\\2014\\a0\""));
  }
}
