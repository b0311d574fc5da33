package rungbook.cli.cache;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.source.Code;
import rungbook.source.Source;

/** What a value can be; its number in this list begins its bytes. */
enum ValueKind {
  STRING(String.class),
  INTEGER(Integer.class),
  DOUBLE(Double.class),
  BOOLEAN(Boolean.class),
  OPTIONAL(Optional.class),
  LIST(List.class),
  MAP(Map.class),
  ENUM(Enum.class),
  CODE(Code.class),
  SOURCE(Source.class),
  RECORD(Record.class);

  private final Class<?> type;

  ValueKind(Class<?> type) {
    this.type = type;
  }

  static ValueKind of(Object value) throws IOException {
    return Stream.of(values()).filter(kind -> kind.type.isInstance(value)).findFirst()
        .orElseThrow(() -> new IOException("no value to keep: " + value.getClass()));
  }
}
