package rungbook.library.lookup;

import java.util.AbstractMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A map that computes each value once, on first access. Its keys are available at once. */
public final class ReadAsNeeded<T> extends AbstractMap<String, T> {

  private final Map<String, Supplier<T>> values;
  private final Map<String, T> made = new ConcurrentHashMap<>();

  public ReadAsNeeded(Map<String, Supplier<T>> values) {
    this.values = Map.copyOf(values);
  }

  @Override
  public @Nullable T get(Object key) {
    Supplier<T> value = values.get(key);
    return value == null ? null : made.computeIfAbsent((String) key, name -> value.get());
  }

  @Override
  public boolean containsKey(Object key) {
    return values.containsKey(key);
  }

  @Override
  public T getOrDefault(Object key, T other) {
    T value = get(key);
    return value == null ? other : value;
  }

  @Override
  public Set<String> keySet() {
    return values.keySet();
  }

  @Override
  public int size() {
    return values.size();
  }

  @Override
  public Set<Entry<String, T>> entrySet() {
    return values.keySet().stream().map(key -> Map.entry(key, get(key))).collect(Collectors.toUnmodifiableSet());
  }
}
