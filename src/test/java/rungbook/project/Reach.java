package rungbook.project;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything that can run, followed from the {@link EntryPoints}: rapid type analysis, that is a virtual call reaches
 * the overrides of those classes only of which an object is made somewhere that is itself reached.
 */
final class Reach {

  private final EntryPoints entry;
  private final Set<JavaCodeUnit> reached = new HashSet<>();
  private final Set<JavaField> read = new HashSet<>();
  private final Set<JavaClass> made = new HashSet<>();
  private final Set<JavaClass> asJson = new HashSet<>();
  private final Set<JavaClass> inTemplates = new HashSet<>();
  private final Deque<JavaCodeUnit> open = new ArrayDeque<>();

  private Reach(EntryPoints entry) {
    this.entry = entry;
  }

  static Reach of(JavaClasses program, EntryPoints entry) {
    var reach = new Reach(entry);
    program.forEach(reach::start);
    while (!reach.open.isEmpty()) {
      reach.follow(reach.open.pop());
    }
    return reach;
  }

  boolean reaches(JavaCodeUnit unit) {
    return reached.contains(unit);
  }

  boolean reads(JavaField field) {
    return read.contains(field);
  }

  private void start(JavaClass one) {
    for (JavaMethod method : one.getMethods()) {
      if (entry.isCalledFromOutside(method)) {
        add(method);
        one.getConstructors().forEach(this::addMadeByTheContainer);
      }
    }
    if (entry.isRow(one) || entry.isMadeByTheOptionParser(one)) {
      one.getConstructors().forEach(this::add);
    }
    if (entry.isCollectedByTheFramework(one)) {
      one.getConstructors().forEach(this::addMadeByTheContainer);
    }
  }

  /** With what it asks for. */
  private void addMadeByTheContainer(JavaCodeUnit maker) {
    add(maker);
    maker.getRawParameterTypes().stream().filter(entry::isBean).flatMap(bean -> bean.getConstructors().stream())
        .filter(bean -> !reached.contains(bean)).forEach(this::addMadeByTheContainer);
  }

  private void add(JavaCodeUnit unit) {
    if (Program.isOurs(unit.getOwner()) && reached.add(unit)) {
      open.push(unit);
    }
  }

  private void follow(JavaCodeUnit unit) {
    touch(unit.getOwner());
    if (unit instanceof JavaConstructor) {
      make(unit.getOwner());
    } else if (unit instanceof JavaMethod method) {
      addOverrides(method);
      addWhatGoesOut(method);
    }
    unit.getAccessesFromSelf().forEach(this::follow);
    unit.getReferencedClassObjects().stream().map(object -> object.getRawType()).filter(entry::isMadeFromItsClass)
        .flatMap(one -> one.getConstructors().stream()).forEach(this::add);
  }

  private void touch(JavaClass one) {
    one.getStaticInitializer().ifPresent(this::add);
  }

  private void follow(JavaAccess<?> access) {
    AccessTarget target = access.getTarget();
    JavaMember member = target.resolveMember().map(JavaMember.class::cast).orElse(null);
    if (member instanceof JavaField field) {
      touch(field.getOwner());
      if (((JavaFieldAccess) access).getAccessType() == JavaFieldAccess.AccessType.GET) {
        read.add(field);
      }
    } else if (member instanceof JavaCodeUnit unit) {
      add(unit);
    }
  }

  /** An object of a class: all that was called before on a type of its, and all that a library may call. */
  private void make(JavaClass one) {
    if (!made.add(one)) {
      return;
    }
    for (JavaClass level : levels(one)) {
      for (JavaMethod method : level.getMethods()) {
        boolean wanted = supertypes(one).flatMap(up -> up.getMethods().stream())
            .anyMatch(up -> overrides(method, up) && (!Program.isOurs(up.getOwner()) || reached.contains(up)));
        if (wanted) {
          add(method);
        }
      }
    }
  }

  private void addOverrides(JavaMethod method) {
    method.getOwner().getAllSubclasses().stream().filter(made::contains).flatMap(one -> levels(one).stream())
        .flatMap(level -> level.getMethods().stream()).filter(other -> overrides(other, method)).forEach(this::add);
  }

  private static Set<JavaClass> levels(JavaClass one) {
    return Stream.concat(Stream.of(one), one.getAllRawSuperclasses().stream()).filter(Program::isOurs)
        .collect(Collectors.toSet());
  }

  private static Stream<JavaClass> supertypes(JavaClass one) {
    return Stream.concat(one.getAllRawSuperclasses().stream(), one.getAllRawInterfaces().stream());
  }

  /** By name and number of parameters: a type argument may have replaced their types. */
  private static boolean overrides(JavaMethod method, JavaMethod up) {
    return method != up && method.getName().equals(up.getName()) && !method.getModifiers().contains(JavaModifier.STATIC)
        && method.getRawParameterTypes().size() == up.getRawParameterTypes().size();
  }

  private void addWhatGoesOut(JavaMethod method) {
    if (entry.carriesJson(method)) {
      Stream.concat(Stream.of(method.getReturnType()), method.getParameterTypes().stream()).forEach(this::addJson);
    }
    if (entry.feedsATemplate(method)) {
      method.getParameterTypes().forEach(this::addTemplate);
    }
  }

  /** Every component of a record goes out, or comes in. */
  private void addJson(JavaType type) {
    for (JavaClass one : type.getAllInvolvedRawTypes()) {
      if (Program.isOurs(one) && one.isRecord() && asJson.add(one)) {
        one.getConstructors().forEach(this::add);
        one.getFields().forEach(field -> {
          read.add(field);
          addJson(field.getType());
        });
      }
    }
  }

  private void addTemplate(JavaType type) {
    for (JavaClass one : type.getAllInvolvedRawTypes()) {
      if (Program.isOurs(one) && inTemplates.add(one)) {
        one.getAllMethods().stream().filter(entry::isMentionedInATemplate).forEach(method -> {
          add(method);
          addTemplate(method.getReturnType());
        });
      }
    }
  }
}
