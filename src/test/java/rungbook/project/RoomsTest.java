package rungbook.project;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungbook.action.ActionKind;
import rungbook.library.Folder;
import rungbook.library.LooseFolder;

/** The rooms of the program and their walls. Each rule is a field; its reason is part of it. */
class RoomsTest {

  private static final DescribedPredicate<JavaClass> INPUT_AND_OUTPUT = resideInAnyPackage("java.io", "java.nio.file..",
      "java.nio.channels..", "java.net..", "java.sql..")
      .and(not(
          belongToAnyOf(java.io.Serializable.class, java.io.UncheckedIOException.class, java.io.IOException.class)));

  private static final DescribedPredicate<JavaClass> CLOCKS = belongToAnyOf(
      java.time.Clock.class, java.time.Instant.class, java.util.Date.class, java.util.Calendar.class,
      java.util.Timer.class);

  static final ArchRule IMPORTS_GO_ONE_WAY = classes().should(new OneWay())
      .because("a room that knows only the ones before it can be read, tested and replaced by itself");

  static final ArchRule ONLY_MARKDOWN_KNOWS_THE_PARSERS = noClasses().that()
      .resideOutsideOfPackage("rungbook.markdown..")
      .should().dependOnClassesThat().resideInAnyPackage("com.vladsch.flexmark..", "org.snakeyaml..")
      .because("a change of Markdown or YAML parser is to touch one room");

  static final ArchRule ONLY_STORE_KNOWS_THE_DATABASE = noClasses().that().resideOutsideOfPackage("rungbook.store..")
      .should().dependOnClassesThat()
      .resideInAnyPackage("io.quarkus.hibernate..", "jakarta.persistence..", "org.hibernate", "java.sql..")
      .because("what is kept and how it is locked is settled in one room");

  static final ArchRule STORE_KNOWS_NO_TREES = noClasses().that().resideInAPackage("rungbook.store..")
      .should().dependOnClassesThat()
      .resideInAnyPackage("rungbook.tree..", "rungbook.rules..", "rungbook.markdown..", "rungbook.system..")
      .because("the store keeps any text, a broken tree too");

  static final ArchRule A_SYSTEM_KNOWS_NO_MARKDOWN = noClasses().that().resideInAPackage("rungbook.system")
      .should().dependOnClassesThat().resideInAPackage("rungbook.markdown..")
      .because("a circuit depends on what a system is, not on how it is written");

  static final ArchRule CIRCUIT_KNOWS_NO_TREES = noClasses().that().resideInAPackage("rungbook.circuit..")
      .should().dependOnClassesThat().resideInAnyPackage("rungbook.tree..", "rungbook.rules..").allowEmptyShould(true)
      .because("what a meter reads does not depend on who asks");

  static final ArchRule ONLY_ITS_TABLE_TELLS_ACTIONS_APART = noClasses().that()
      .resideOutsideOfPackage("rungbook.action..")
      .should().accessFieldWhere(target(owner(type(ActionKind.class))))
      .because(
          "a new action is a row of that table, and a room that tells one action from another would have to be "
              + "found and changed");

  static final ArchRule COMMANDS_KNOW_NO_SERVER = noClasses().that().resideInAPackage("rungbook.cli..")
      .should().dependOnClassesThat()
      .resideInAnyPackage("rungbook.store..", "rungbook.web..", "io.quarkus..", "jakarta..")
      .because("a command answers before a server could start");

  static final ArchRule RULES_DO_NO_INPUT_OR_OUTPUT = noClasses().that()
      .resideInAnyPackage("rungbook.rules..", "rungbook.action..", "rungbook.tree..", "rungbook.circuit..")
      .should().dependOnClassesThat(INPUT_AND_OUTPUT)
      .because("the same tree has the same problems everywhere");

  static final ArchRule PACKS_HAVE_NO_NETWORK_CLOCK_OR_DATABASE = noClasses().that().resideInAPackage("rungbook.pack..")
      .should()
      .dependOnClassesThat(
          resideInAnyPackage("java.net.http..", "java.sql..", "javax.net..", "rungbook.store..").or(CLOCKS))
      .allowEmptyShould(true)
      .because("the same input is to give the same bytes");

  static final ArchRule NO_CLOCK_IN_THE_CORE = noClasses().that()
      .resideInAnyPackage("rungbook.source..", "rungbook.markdown..", "rungbook.system..",
          "rungbook.action..", "rungbook.tree..", "rungbook.rules..", "rungbook.circuit..", "rungbook.proof..",
          "rungbook.report..", "rungbook.library..")
      .should().dependOnClassesThat(CLOCKS).orShould().callMethod(System.class, "currentTimeMillis").orShould()
      .callMethod(System.class, "nanoTime")
      .because("output is a pure function of input");

  static final ArchRule ONLY_FOLDERS_TOUCH_FILES = noClasses()
      .that(resideInAnyPackage("rungbook.source..", "rungbook.markdown..", "rungbook.system..", "rungbook.action..",
          "rungbook.tree..",
          "rungbook.rules..", "rungbook.circuit..", "rungbook.proof..", "rungbook.pack..", "rungbook.library..",
          "rungbook.report..", "rungbook.map..", "rungbook.ladder..")
          // reading a library's folder is what these two are for
          .and(not(belongToAnyOf(Folder.class, LooseFolder.class))))
      .should().dependOnClassesThat(resideInAPackage("java.nio.file.."))
      .because("a library may come from a folder, an archive, a database or a page");

  @TestFactory
  Stream<DynamicTest> everyWallStands() {
    return Arrays.stream(RoomsTest.class.getDeclaredFields()).filter(field -> field.getType() == ArchRule.class)
        .map(field -> DynamicTest.dynamicTest(field.getName().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
            () -> rule(field).check(Program.CLASSES)));
  }

  private static ArchRule rule(Field field) {
    try {
      return (ArchRule) field.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }
}
