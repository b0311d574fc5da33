package rungbook.project;

import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Who calls into the program from outside it. Each rule gives the reason why a member needs no caller of our own. */
final class EntryPoints {

  /** The JVM starts them. */
  private static final String MAIN = "main";

  /** The REST layer calls methods with these; a path alone makes none. */
  private static final Set<
      String> REST = Set.of("GET", "POST", "PUT", "DELETE", "ServerExceptionMapper", "ServerRequestFilter",
          "ServerResponseFilter", "RouteFilter");

  /** The container calls methods with these on themselves, or on a parameter. */
  private static final Set<
      String> CONTAINER = Set.of("PostConstruct", "PreDestroy", "Produces", "Scheduled", "Observes", "ObservesAsync");

  /**
   * The container makes a class with one of these for whoever asks for it; that nobody asks is not enough to keep it.
   */
  private static final Set<String> BEAN = Set.of("ApplicationScoped", "Singleton", "RequestScoped", "Dependent");

  /** The option parser writes them, and reads the values that it answers for itself, such as {@code --help}. */
  private static final Set<String> OPTION = Set.of("Option", "Parameters", "Spec", "Mixin");

  /** Hibernate makes rows and fills every column. */
  private static final String ROW = "Entity";

  /** Template methods are filled in by the build. */
  private static final String TEMPLATES = "CheckedTemplate";

  /** Templates call its methods by name. */
  private static final String EXTENSION = "TemplateExtension";

  /** The framework makes one when the program starts it with the class itself. */
  private static final String APPLICATION = "io.quarkus.runtime.QuarkusApplication";

  private static final String VERSIONS = "picocli.CommandLine$IVersionProvider";

  /** The REST layer makes the filters, interceptors and mappers that carry this annotation, and calls them. */
  private static final String PROVIDER = "Provider";

  /** Interfaces of the framework: it collects every bean that implements one, and calls it. */
  private static final Set<String> COLLECTED = Set.of("io.quarkus.jackson.ObjectMapperCustomizer");

  private static final Path TEMPLATE_FOLDER = Path.of("src/main/resources/templates");

  private static final Pattern EXPRESSION = Pattern.compile("\\{([^{}]*)}");
  private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");

  private final Set<String> templateWords = new HashSet<>();

  EntryPoints() {
    try (Stream<Path> templates = Files.list(TEMPLATE_FOLDER)) {
      templates.forEach(this::readWords);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void readWords(Path template) {
    try {
      Matcher expression = EXPRESSION.matcher(Files.readString(template));
      while (expression.find()) {
        WORD.matcher(expression.group(1)).results().forEach(word -> templateWords.add(word.group()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean isCalledFromOutside(JavaMethod method) {
    boolean main = method.getName().equals(MAIN) && method.getModifiers().contains(JavaModifier.STATIC);
    boolean extension = method.getOwner().getAnnotations().stream().anyMatch(a -> name(a).equals(EXTENSION))
        && isMentionedInATemplate(method);
    return main || extension || isAnnotated(method, REST) || isAnnotated(method, CONTAINER)
        || method.getParameters().stream().flatMap(p -> p.getAnnotations().stream())
            .anyMatch(a -> CONTAINER.contains(name(a)));
  }

  /** Whether values that go in or come out are read and written by the REST layer. */
  boolean carriesJson(JavaMethod method) {
    return isAnnotated(method, REST);
  }

  boolean isBean(JavaClass one) {
    return one.getAnnotations().stream().anyMatch(a -> BEAN.contains(name(a)));
  }

  boolean isRow(JavaClass one) {
    return one.getAnnotations().stream().anyMatch(a -> name(a).equals(ROW));
  }

  /** The option parser makes what a command names as its source of versions. */
  boolean isMadeByTheOptionParser(JavaClass one) {
    return one.getAllRawInterfaces().stream().anyMatch(up -> up.getName().equals(VERSIONS));
  }

  /** A class that the framework finds by its type, with no caller of our own. */
  boolean isCollectedByTheFramework(JavaClass one) {
    return one.getAnnotations().stream().anyMatch(a -> name(a).equals(PROVIDER))
        || one.getAllRawInterfaces().stream().anyMatch(up -> COLLECTED.contains(up.getName()));
  }

  boolean isMadeFromItsClass(JavaClass one) {
    return one.getAllRawInterfaces().stream().anyMatch(up -> up.getName().equals(APPLICATION));
  }

  boolean isFilledFromOutside(JavaMember field) {
    return isAnnotated(field, OPTION) || isRow(field.getOwner());
  }

  /** What a template is given. */
  boolean feedsATemplate(JavaMethod method) {
    return method.getModifiers().contains(JavaModifier.NATIVE)
        && method.getOwner().getAnnotations().stream().anyMatch(a -> name(a).equals(TEMPLATES));
  }

  /** Whether some template mentions a member of this name; which value it is asked of is not looked at. */
  boolean isMentionedInATemplate(JavaCodeUnit method) {
    return templateWords.contains(method.getName());
  }

  private static boolean isAnnotated(JavaMember member, Set<String> names) {
    return member.getAnnotations().stream().anyMatch(a -> names.contains(name(a)));
  }

  private static String name(JavaAnnotation<?> annotation) {
    return annotation.getRawType().getSimpleName();
  }
}
