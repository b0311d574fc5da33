package rungbook.web.pages;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.Optional;
import rungbook.web.views.ReadingForm;

/** The fields of the form for a reading, from a page's address. */
record ReadingFields(MultivaluedMap<String, String> fields) {

  /** Whether the form was sent. */
  boolean isAsked() {
    return fields.containsKey("read");
  }

  ReadingForm form() {
    return new ReadingForm(field("red"), field("black"), field("quantity"), field("fault"), field("variant"),
        field("meter"), Optional.ofNullable(fields.get("set")).orElse(List.of()));
  }

  private String field(String name) {
    return Optional.ofNullable(fields.getFirst(name)).orElse("");
  }
}
