package rungbook.web.service;

import java.time.Instant;
import java.time.ZoneId;
import rungbook.store.document.Revision;
import rungbook.text.Day;

/** A revision without its content. {@code revision} is the number that the next save names as {@code basedOn}. */
public record DocumentEntry(String path, int revision, boolean removed, String author, String message, Instant at,
    String parent, String hash) {
  public static DocumentEntry of(Revision r) {
    return new DocumentEntry(r.path().text(), r.number(), !r.isThere(), r.author(), r.message(), r.at(),
        r.parent().hex(), r.hash().hex());
  }

  /** The time as people read it, in the machine's own zone. */
  public String day() {
    return Day.andTime(at.atZone(ZoneId.systemDefault()));
  }

  public String briefHash() {
    return hash.substring(0, 10);
  }
}
