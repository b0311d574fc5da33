package rungbook.cli.cache;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Source;

/**
 * Writes records, and what they are made of, as bytes. Of a text it writes only the name, since the text itself is part
 * of the key.
 */
final class ValueWriter {

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);
  private final Map<String, Integer> strings = new HashMap<>();
  private final Map<String, Source> sources;

  /** @param sources the texts that a reader will know, by name */
  ValueWriter(Map<String, Source> sources) {
    this.sources = sources;
  }

  byte[] bytes() {
    return bytes.toByteArray();
  }

  /** @throws IOException if it contains what this does not write */
  ValueWriter write(Object value) throws IOException {
    ValueKind kind = ValueKind.of(value);
    out.writeByte(kind.ordinal());
    switch (kind) {
      case STRING -> string((String) value);
      case INTEGER -> out.writeInt((Integer) value);
      case DOUBLE -> out.writeDouble((Double) value);
      case BOOLEAN -> out.writeBoolean((Boolean) value);
      case OPTIONAL -> optional((Optional<?>) value);
      case LIST -> list((Collection<?>) value);
      case MAP -> map((Map<?, ?>) value);
      case ENUM -> constant((Enum<?>) value);
      case CODE -> string(((Code) value).name());
      case SOURCE -> source((Source) value);
      case RECORD -> record((Record) value);
    }
    return this;
  }

  /** Each string once; later ones are its number. */
  private void string(String text) throws IOException {
    Integer number = strings.putIfAbsent(text, strings.size());
    out.writeInt(number == null ? strings.size() - 1 : number);
    if (number == null) {
      byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
      out.writeInt(encoded.length);
      out.write(encoded);
    }
  }

  private void optional(Optional<?> value) throws IOException {
    out.writeBoolean(value.isPresent());
    if (value.isPresent()) {
      write(value.get());
    }
  }

  private void list(Collection<?> values) throws IOException {
    out.writeInt(values.size());
    for (Object one : values) {
      write(one);
    }
  }

  private void map(Map<?, ?> values) throws IOException {
    out.writeInt(values.size());
    for (Map.Entry<?, ?> one : values.entrySet()) {
      write(one.getKey());
      write(one.getValue());
    }
  }

  private void constant(Enum<?> value) throws IOException {
    string(value.getDeclaringClass().getName());
    string(value.name());
  }

  @SuppressWarnings("ReferenceEquality") // a text of the same name may be another one
  private void source(Source source) throws IOException {
    if (sources.get(source.name()) != source) {
      throw new IOException("no text of the library: " + source.name());
    }
    string(source.name());
  }

  private void record(Record value) throws IOException {
    string(value.getClass().getName());
    for (RecordComponent part : value.getClass().getRecordComponents()) {
      try {
        part.getAccessor().setAccessible(true);
        write(part.getAccessor().invoke(value));
      } catch (ReflectiveOperationException e) {
        throw new IOException(e);
      }
    }
  }
}
