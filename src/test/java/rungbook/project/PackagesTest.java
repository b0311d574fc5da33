package rungbook.project;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Packages are small, know each other one way at every depth, and never share the name of a class. */
class PackagesTest {

  private static final int MOST_FILES = 25;

  private static final SliceAssignment EACH_PACKAGE = new SliceAssignment() {
    @Override
    public SliceIdentifier getIdentifierOf(JavaClass type) {
      return type.getPackageName().startsWith("rungbook") ? SliceIdentifier.of(type.getPackageName())
          : SliceIdentifier.ignore();
    }

    @Override
    public String getDescription() {
      return "each package";
    }
  };

  @Test
  void noCycleBetweenPackagesAtAnyDepth() {
    slices().assignedFrom(EACH_PACKAGE).should().beFreeOfCycles().check(Program.CLASSES);
  }

  @Test
  void aPackageHoldsAtMostTwentyFiveFiles() {
    Map<String, Long> files = topLevel().stream().filter(type -> !type.getSimpleName().equals("package-info"))
        .collect(Collectors.groupingBy(JavaClass::getPackageName, TreeMap::new, Collectors.counting()));
    files.values().removeIf(count -> count <= MOST_FILES);
    assertEquals(Map.of(), files);
  }

  @Test
  void aSimpleNameMeansOneThing() {
    Map<String,
        List<String>> packages = topLevel().stream().filter(type -> !type.getSimpleName().equals("package-info"))
            .collect(Collectors.groupingBy(JavaClass::getSimpleName, TreeMap::new,
                Collectors.mapping(JavaClass::getPackageName, Collectors.toList())));
    packages.values().removeIf(places -> places.size() == 1);
    assertEquals(Map.of(), packages);
  }

  private static List<JavaClass> topLevel() {
    return Program.CLASSES.stream().filter(type -> type.isTopLevelClass() && !type.getSimpleName().contains("_"))
        .toList();
  }
}
