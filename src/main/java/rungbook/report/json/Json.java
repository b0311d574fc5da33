package rungbook.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes JSON with two spaces of indent and line feeds, the same on every system. */
public final class Json {

  private Json() {}

  /** Writes one document. */
  @FunctionalInterface
  public interface Writing {
    void to(JsonGenerator json) throws IOException;
  }

  /** A whole document. */
  public static String write(Writing writing) {
    var text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"))
          .withArrayIndenter(new DefaultIndenter("  ", "\n")));
      writing.to(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a string cannot fail to be written to
    }
    return text.append('\n').toString();
  }

  /** An object as the value of a name. */
  public static void object(JsonGenerator json, String name, Writing fields) throws IOException {
    json.writeObjectFieldStart(name);
    fields.to(json);
    json.writeEndObject();
  }

  /** An array as the value of a name. */
  public static void array(JsonGenerator json, String name, Writing items) throws IOException {
    json.writeArrayFieldStart(name);
    items.to(json);
    json.writeEndArray();
  }

  /** An object as an item of an array. */
  public static void item(JsonGenerator json, Writing fields) throws IOException {
    json.writeStartObject();
    fields.to(json);
    json.writeEndObject();
  }
}
