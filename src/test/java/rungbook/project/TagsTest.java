package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.quarkus.test.junit.QuarkusTest;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The fast command leaves out what needs a server or a browser, and nothing else: it goes by the tags. */
class TagsTest {

  private static final JavaClasses TESTS = new ClassFileImporter()
      .withImportOption(new ImportOption.OnlyIncludeTests()).importPackages("rungbook");

  @Test
  void theTestsOnARunningServerAreTagged() {
    assertTagged("server", type -> type.isAnnotatedWith(QuarkusTest.class));
  }

  @Test
  void theTestsInABrowserAreTagged() {
    assertTagged("browser", type -> type.getDirectDependenciesFromSelf().stream()
        .anyMatch(dependency -> dependency.getTargetClass().getPackageName().equals("rungbook.browser")
            || dependency.getTargetClass().getPackageName().startsWith("org.openqa.selenium")));
  }

  private static void assertTagged(String tag, Predicate<JavaClass> needsIt) {
    Set<String> needing = names(needsIt.and(type -> outermost(type).getSimpleName().endsWith("Test")));
    assertTrue(needing.size() > 5, needing::toString);
    assertEquals(needing, names(type -> Stream.of(type.reflect().getAnnotationsByType(Tag.class))
        .anyMatch(present -> present.value().equals(tag))));
  }

  private static Set<String> names(Predicate<JavaClass> chosen) {
    return TESTS.stream().filter(chosen).map(type -> outermost(type).getName())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static JavaClass outermost(JavaClass type) {
    return type.getEnclosingClass().map(TagsTest::outermost).orElse(type);
  }
}
