package rungbook.system.reader;

import rungbook.markdown.Document;

/** A system without its variants, for tests of other packages. */
public final class BaseSystem {

  private BaseSystem() {}

  public static SystemReader.Read read(String id, Document document) {
    return SystemReader.lines(id, document).checked();
  }
}
