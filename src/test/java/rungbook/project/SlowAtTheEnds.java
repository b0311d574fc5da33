package rungbook.project;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.ClassDescriptor;
import org.junit.jupiter.api.ClassOrderer;
import org.junit.jupiter.api.ClassOrdererContext;
import org.junit.jupiter.api.Tag;

/**
 * The order of test classes that run two at a time. JUnit's two threads take classes from either end, so those with
 * {@code @Tag("slow")} are at the ends by turns, and only short ones are left where the threads meet.
 */
public final class SlowAtTheEnds implements ClassOrderer {

  @Override
  public void orderClasses(ClassOrdererContext context) {
    List<? extends ClassDescriptor> all = context.getClassDescriptors();
    List<Class<?>> slow = all.stream().<Class<?>>map(ClassDescriptor::getTestClass).filter(SlowAtTheEnds::isSlow)
        .toList();
    Map<Class<?>, Integer> places = new HashMap<>();
    for (int i = 0; i < slow.size(); i++) {
      places.put(slow.get(i), (i % 2 == 0 ? 1 : -1) * (i - slow.size()));
    }
    all.sort((one, other) -> Integer.compare(place(places, one), place(places, other)));
  }

  private static int place(Map<Class<?>, Integer> places, ClassDescriptor type) {
    return places.getOrDefault(type.getTestClass(), 0);
  }

  private static boolean isSlow(Class<?> type) {
    for (Tag tag : type.getAnnotationsByType(Tag.class)) {
      if (tag.value().equals("slow")) {
        return true;
      }
    }
    return false;
  }
}
