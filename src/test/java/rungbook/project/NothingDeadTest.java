package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaStaticInitializer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every method and constructor can run, and every field is read, in the program itself: a call from a test keeps
 * nothing alive.
 *
 * <p>What bytecode does not show is left out: constants of a primitive type or a string, which the compiler copies to
 * where they are used, and the constants of an enum, which may be asked for by name.
 */
class NothingDeadTest {

  private static final EntryPoints ENTRY = new EntryPoints();
  private static final Reach REACH = Reach.of(Program.CLASSES, ENTRY);

  /** By the full name of a class or a member: what is kept though nothing in the program reaches it, and why. */
  private static final Map<String, String> KEPT = Map.ofEntries(
      Map.entry("rungbook.rules.api.Rule.codes",
          "a rule says which problems it reports; its page and its case are held to it"),
      Map.entry("rungbook.circuit.network.Phasor", "a complex number has its four operations and its angle"),
      Map.entry("rungbook.web.service.ProofService.load", "tests see by it that a stopped proof frees its worker"),
      Map.entry("rungbook.web.job.RoundRobinExecutor.load", "as above"));

  @Test
  void everyMethodAndConstructorIsReachedFromAnEntryPoint() {
    assertEquals(List.of(), notKept(deadUnits()),
        "no entry point reaches these: remove them, or move them to the tests");
  }

  @Test
  void everyFieldIsRead() {
    assertEquals(List.of(), notKept(deadFields()), "these are written and never read");
  }

  @Test
  void nothingIsKeptThatWouldBeReachedAnyway() {
    var needless = new TreeSet<>(KEPT.keySet());
    Stream.concat(deadUnits(), deadFields()).forEach(member -> needless.removeIf(kept -> isOf(kept, member)));
    assertEquals(List.of(), List.copyOf(needless), "an entry point reaches all of these: take them off the list");
  }

  private static List<String> notKept(Stream<? extends JavaMember> dead) {
    return dead.filter(member -> KEPT.keySet().stream().noneMatch(kept -> isOf(kept, member)))
        .map(JavaMember::getFullName).sorted().toList();
  }

  private static Stream<JavaCodeUnit> deadUnits() {
    return Program.CLASSES.stream().flatMap(one -> one.getCodeUnits().stream()).filter(NothingDeadTest::counts)
        .filter(unit -> !isReached(unit));
  }

  private static Stream<JavaField> deadFields() {
    return Program.CLASSES.stream().flatMap(one -> one.getFields().stream()).filter(NothingDeadTest::counts)
        .filter(field -> !REACH.reads(field));
  }

  private static boolean counts(JavaCodeUnit unit) {
    return !isMadeByTheCompiler(unit) && !isKeptPrivate(unit)
        && !unit.getName().equals(JavaStaticInitializer.STATIC_INITIALIZER_NAME);
  }

  /** A class's name takes in its members and nested classes, an interface's method its implementations. */
  private static boolean isOf(String kept, JavaMember member) {
    JavaClass owner = member.getOwner();
    return (owner.getName() + "$").startsWith(kept + "$") || kept.equals(owner.getName() + "." + member.getName())
        || kept.equals(member.getFullName()) || owner.getAllRawInterfaces().stream()
            .anyMatch(up -> kept.equals(up.getName() + "." + member.getName()));
  }

  /** Bridges, and what an enum and a record get. */
  private static boolean isMadeByTheCompiler(JavaCodeUnit unit) {
    Set<JavaModifier> modifiers = unit.getModifiers();
    boolean ofEnum = unit.getOwner().isEnum() && Set.of("values", "valueOf").contains(unit.getName());
    boolean ofRecord = unit.getOwner().isRecord() && Set.of("equals", "hashCode", "toString").contains(unit.getName());
    return modifiers.contains(JavaModifier.SYNTHETIC) || modifiers.contains(JavaModifier.BRIDGE) || ofEnum || ofRecord;
  }

  /** The constructor that keeps others from making one. */
  private static boolean isKeptPrivate(JavaCodeUnit unit) {
    return unit.isConstructor() && unit.getModifiers().contains(JavaModifier.PRIVATE)
        && unit.getRawParameterTypes().isEmpty();
  }

  /** Asking for a component and reading its field inside the record are the same. */
  private static boolean isReached(JavaCodeUnit unit) {
    return REACH.reaches(unit) || component(unit).filter(REACH::reads).isPresent() || isComparedAsAWhole(unit);
  }

  private static Optional<JavaField> component(JavaCodeUnit unit) {
    boolean accessor = unit.getOwner().isRecord() && unit.getRawParameterTypes().isEmpty() && !unit.isConstructor();
    return accessor ? unit.getOwner().tryGetField(unit.getName()) : Optional.empty();
  }

  /** A record of which no component is read is a key: its own {@code equals} reads them all, unseen. */
  private static boolean isComparedAsAWhole(JavaCodeUnit unit) {
    return component(unit).isPresent() && unit.getOwner().getFields().stream().noneMatch(REACH::reads);
  }

  private static boolean counts(JavaField field) {
    Set<JavaModifier> modifiers = field.getModifiers();
    boolean inlined = modifiers.contains(JavaModifier.STATIC) && modifiers.contains(JavaModifier.FINAL)
        && (field.getRawType().isPrimitive() || field.getRawType().isEquivalentTo(String.class));
    boolean ofEnum = field.getOwner().isEnum() && field.getRawType().equals(field.getOwner());
    boolean component = field.getOwner().isRecord() && !modifiers.contains(JavaModifier.STATIC);
    return !inlined && !ofEnum && !component && !modifiers.contains(JavaModifier.SYNTHETIC)
        && !ENTRY.isFilledFromOutside(field);
  }
}
