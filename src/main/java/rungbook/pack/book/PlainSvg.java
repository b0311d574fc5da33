package rungbook.pack.book;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import rungbook.text.Markup;

/** An SVG picture with nothing but its drawing: no script, no link, nothing from elsewhere, no other vocabulary. */
final class PlainSvg {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** Elements that run, load, lead away, or say nothing about the drawing. */
  private static final Set<String> LEFT_OUT = Set.of("script", "foreignobject", "metadata", "handler", "listener",
      "animate", "animatecolor", "animatemotion", "animatetransform", "set", "discard", "iframe", "audio", "video");

  private static final int DEEPEST = 500;

  private final XMLStreamReader in;
  private final StringBuilder out = new StringBuilder();
  private int depth;

  /** The one that was opened last. */
  private String element = "";

  private PlainSvg(XMLStreamReader in) {
    this.in = in;
  }

  /** Empty for a file that is no well-formed SVG. */
  static Optional<byte[]> of(byte[] svg) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      return new PlainSvg(factory.createXMLStreamReader(new ByteArrayInputStream(svg))).written()
          .map(text -> text.getBytes(StandardCharsets.UTF_8));
    } catch (XMLStreamException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<String> written() throws XMLStreamException {
    while (in.hasNext()) {
      switch (in.next()) {
        case XMLStreamConstants.START_ELEMENT -> open();
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          out.append("</").append(in.getLocalName()).append('>');
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text(in.getText());
        default -> {} // comments, instructions and the document type draw nothing
      }
    }
    return out.indexOf("<svg ") == 0 ? Optional.of(out.append('\n').toString()) : Optional.empty();
  }

  private void open() throws XMLStreamException {
    String name = in.getLocalName();
    if (!SVG.equals(in.getNamespaceURI()) || LEFT_OUT.contains(name.toLowerCase(Locale.ROOT)) || depth == DEEPEST) {
      skip();
      return;
    }
    element = name;
    out.append('<').append(name);
    if (depth++ == 0) {
      out.append(" xmlns=\"").append(SVG).append("\" xmlns:xlink=\"").append(XLINK).append('"');
    }
    for (int i = 0; i < in.getAttributeCount(); i++) {
      attribute(i);
    }
    out.append('>');
  }

  /** Of a style only what names no file. */
  private void text(String text) {
    if (!element.equals("style") || !leadsAway(text)) {
      out.append(Markup.escape(text));
    }
  }

  /** To the end of an element. */
  private void skip() throws XMLStreamException {
    for (int open = 1; open > 0;) {
      int event = in.next();
      open += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
    }
  }

  private void attribute(int i) {
    String name = in.getAttributeLocalName(i);
    String space = Optional.ofNullable(in.getAttributeNamespace(i)).orElse("");
    String value = in.getAttributeValue(i);
    boolean reference = name.equals("href") && (space.isEmpty() || space.equals(XLINK));
    boolean plain = space.isEmpty() && !name.toLowerCase(Locale.ROOT).startsWith("on") && !leadsAway(value);
    if (reference ? isInside(value) : plain && !name.equals("href")) {
      out.append(reference ? " xlink:href" : " " + name).append("=\"").append(Markup.escape(value)).append('"');
    }
  }

  private static boolean isInside(String reference) {
    return reference.startsWith("#") || reference.matches("data:image/(?:png|jpeg|gif);base64,[A-Za-z0-9+/=\\s]*");
  }

  /** A style or a paint that names a file. */
  private static boolean leadsAway(String value) {
    return value.replaceAll("url\\(\\s*[\"']?#", "").toLowerCase(Locale.ROOT).matches("(?s).*(?:url\\(|@import).*");
  }
}
