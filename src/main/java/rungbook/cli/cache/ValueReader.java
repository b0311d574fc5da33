package rungbook.cli.cache;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.source.Code;
import rungbook.source.Source;

/** Reads what {@link ValueWriter} has written. */
final class ValueReader {

  private final DataInputStream in;
  private final List<String> strings = new ArrayList<>();
  private final Map<String, Constructor<?>> constructors = new LinkedHashMap<>();
  private final Map<String, Source> sources;

  /** @param sources the texts, by name */
  ValueReader(byte[] bytes, Map<String, Source> sources) {
    in = new DataInputStream(new ByteArrayInputStream(bytes));
    this.sources = sources;
  }

  /**
   * The next value.
   *
   * @throws IOException if the bytes are not such a value
   */
  <T> T read(Class<T> type) throws IOException {
    try {
      return type.cast(value());
    } catch (RuntimeException | ReflectiveOperationException e) {
      throw new IOException(e);
    }
  }

  private Object value() throws IOException, ReflectiveOperationException {
    return switch (ValueKind.values()[in.readByte()]) {
      case STRING -> string();
      case INTEGER -> in.readInt();
      case DOUBLE -> in.readDouble();
      case BOOLEAN -> in.readBoolean();
      case OPTIONAL -> in.readBoolean() ? Optional.of(value()) : Optional.empty();
      case LIST -> list();
      case MAP -> map();
      case ENUM -> constant();
      case CODE -> Code.of(string());
      case SOURCE -> source();
      case RECORD -> record();
    };
  }

  private String string() throws IOException {
    int number = in.readInt();
    if (number == strings.size()) {
      strings.add(new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8));
    }
    return strings.get(number);
  }

  private List<Object> list() throws IOException, ReflectiveOperationException {
    int size = in.readInt();
    var values = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      values.add(value());
    }
    return values;
  }

  private Map<Object, Object> map() throws IOException, ReflectiveOperationException {
    int size = in.readInt();
    var values = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      values.put(value(), value());
    }
    return values;
  }

  private Object constant() throws IOException, ReflectiveOperationException {
    Class<?> type = type(string());
    String name = string();
    return Stream.of(type.getEnumConstants()).filter(one -> ((Enum<?>) one).name().equals(name)).findFirst()
        .orElseThrow();
  }

  private Source source() throws IOException {
    String name = string();
    return Optional.ofNullable(sources.get(name)).orElseThrow(() -> new IOException("there is no " + name));
  }

  private Object record() throws IOException, ReflectiveOperationException {
    String name = string();
    Constructor<?> constructor = constructors.get(name);
    if (constructor == null) {
      constructor = constructor(type(name));
      constructors.put(name, constructor);
    }
    Object[] parts = new Object[constructor.getParameterCount()];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = value();
    }
    return constructor.newInstance(parts);
  }

  private static Constructor<?> constructor(Class<?> type) throws ReflectiveOperationException {
    Constructor<?> constructor = type.getDeclaredConstructor(
        Stream.of(type.getRecordComponents()).map(RecordComponent::getType).toArray(Class<?>[]::new));
    constructor.setAccessible(true);
    return constructor;
  }

  /** Only the program's own types. */
  private static Class<?> type(String name) throws IOException, ReflectiveOperationException {
    if (!name.startsWith("rungbook.")) {
      throw new IOException("no type of the program: " + name);
    }
    return Class.forName(name);
  }
}
