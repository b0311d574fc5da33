package rungbook.report.json;

import java.net.URI;
import java.net.URISyntaxException;

/** A file's path as a URI reference (RFC 3986): relative paths stay relative. */
final class FileUri {

  private FileUri() {}

  /** @param path with forward slashes */
  static String of(String path) {
    boolean drive = path.length() > 1 && path.charAt(1) == ':';
    boolean absolute = path.startsWith("/") || drive;
    try {
      String rooted = drive ? "/" + path : absolute ? path : "/" + path;
      String ascii = new URI(absolute ? "file" : null, absolute ? "" : null, rooted, null).toASCIIString();
      return absolute ? ascii : ascii.substring(1);
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(path, e);
    }
  }
}
