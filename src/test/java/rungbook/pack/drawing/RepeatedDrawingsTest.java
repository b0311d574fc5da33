package rungbook.pack.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import rungbook.source.PictureKind;

class RepeatedDrawingsTest {

  private static final String INSIDE = "<path d=\"M0 0h10v10h-10z\"/>".repeat(5);
  private static final String DRAWING = "<svg role=\"img\" aria-label=\"Drawing: R to C\" viewBox=\"0 0 9 9\""
      + " width=\"2em\">"
      + INSIDE + "</svg>";

  @Test
  void whatStandsTwiceIsThereOnce() {
    String page = RepeatedDrawings.once("<p>" + DRAWING + "</p><p>" + DRAWING.replace("R to C", "C to R") + "</p>");
    assertEquals(1, page.split(INSIDE, -1).length - 1);
    assertTrue(page.startsWith("<p><svg role=\"img\" aria-label=\"Drawing: R to C\" viewBox=\"0 0 9 9\" width=\"2em\">"
        + "<use href=\"#:d0\"/></svg></p><p><svg role=\"img\" aria-label=\"Drawing: C to R\""), page);
    assertTrue(page.contains("<g id=\":d0\" class=\"leads\">" + INSIDE + "</g>"));
  }

  @Test
  void whatStandsOnceOrIsShortStays() {
    String page = "<p>" + DRAWING + "<svg class=\"bolt\"><path d=\"M1 1\"/></svg>".repeat(2) + "</p>";
    assertEquals(page, RepeatedDrawings.once(page));
  }

  @Test
  void pictureKeepsItsWordsAtEachPlace() {
    String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 36 20\" width=\"36\" height=\"20\">"
        + "<text>24 V</text></svg>";
    String address = PictureAddress.of(PictureKind.SVG, svg.getBytes(StandardCharsets.UTF_8));
    String img = "<img src=\"" + address + "\" alt=\"A &quot;board&quot;\" />";
    String page = RepeatedDrawings.once(img + img);
    String place = "aria-label=\"A &quot;board&quot;\" viewBox=\"0 0 36 20\"";
    assertEquals(3, page.split(place + "|<image id=\":d0\" width=\"36\"", -1).length - 1, page);
    assertEquals(1, page.split("%3Ctext", -1).length - 1);
    assertFalse(page.contains("<img"));
  }

  /** A photograph, and a drawing that does not state its size, would need their bytes read to know it. */
  @Test
  void pictureWithoutASizeStays() {
    String img = "<img src=\"data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg'%3E%3C/svg%3E" + "-".repeat(90)
        + "\" alt=\"a\" />";
    assertEquals(img + img, RepeatedDrawings.once(img + img));
  }

  @Test
  void drawingIsTheSameAfterItsAddressIsRead() {
    String svg = "<svg width=\"9\">24\" duct, 100 % & more # µ\n\t</svg>";
    String address = PictureAddress.of(PictureKind.SVG, svg.getBytes(StandardCharsets.UTF_8));
    assertTrue(address.startsWith("data:image/svg+xml,%3Csvg width='9'%3E24%22 duct"), address);
    assertEquals(svg.replace("\"9\"", "'9'"), decoded(address));
    String quoted = "<svg width=\"9\">it's</svg>";
    assertEquals(quoted, decoded(PictureAddress.of(PictureKind.SVG, quoted.getBytes(StandardCharsets.UTF_8))));
    byte[] latin = "<svg>\u00b5</svg>".getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(PictureAddress.of(PictureKind.SVG, latin).startsWith("data:image/svg+xml;base64,"));
    assertTrue(PictureAddress.of(PictureKind.PNG, latin).startsWith("data:image/png;base64,"));
  }

  private static String decoded(String address) {
    return URLDecoder.decode(address.substring(address.indexOf(',') + 1).replace("+", "%2B"), StandardCharsets.UTF_8);
  }
}
