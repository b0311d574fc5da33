package rungbook.project;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The program's compiled classes, read once for all tests of their structure. */
public final class Program {

  public static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("rungbook");

  private Program() {}

  static boolean isOurs(JavaClass one) {
    return one.getPackageName().startsWith("rungbook");
  }
}
