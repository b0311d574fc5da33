package rungbook.pack.book;

import rungbook.text.Markup;

/** The frame of each page of a book. */
final class BookPage {

  static final String STYLE = "style.css";

  private BookPage() {}

  /**
   * @param title plain text
   * @param type what part of a book it is, as attributes: as EPUB names it, and its role for a screen reader
   * @param content XHTML
   */
  static String of(String title, String type, String content) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <!DOCTYPE html>
        <html xmlns="http://www.w3.org/1999/xhtml"
          xmlns:epub="http://www.idpf.org/2007/ops" lang="en-US" xml:lang="en-US">
        <head><title>%s</title><link rel="stylesheet" type="text/css" href="%s"/></head>
        <body><section %s>
        %s</section></body></html>
        """.formatted(Markup.escape(title), STYLE, type, content);
  }
}
