package rungbook.library;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Field;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rungbook.project.Program;
import rungbook.source.Code;

/** The constants of type {@link Code} that the program's classes declare. */
final class DeclaredCodes {

  private static final List<JavaField> FIELDS = Program.CLASSES.stream()
      .flatMap((JavaClass type) -> type.getFields().stream())
      .filter(
          field -> field.getRawType().isEquivalentTo(Code.class) && field.getModifiers().contains(JavaModifier.STATIC))
      .toList();

  private DeclaredCodes() {}

  /**
   * A constant.
   *
   * @param type the simple name of the class that declares it
   */
  record Declared(String type, String constant, Code code) {}

  static List<Declared> all() {
    return FIELDS.stream()
        .map(field -> new Declared(field.getOwner().getSimpleName(), field.getName(), value(field.reflect()))).toList();
  }

  /** The names of the codes that one room declares. */
  static Set<String> in(String room) {
    return FIELDS.stream().filter(field -> field.getOwner().getPackageName().startsWith(room))
        .map(field -> value(field.reflect()).name()).collect(Collectors.toCollection(TreeSet::new));
  }

  private static Code value(Field field) {
    try {
      field.setAccessible(true);
      return (Code) field.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }
}
