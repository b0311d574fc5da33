import com.google.javascript.jscomp.CheckLevel;
import com.google.javascript.jscomp.CompilationLevel;
import com.google.javascript.jscomp.Compiler;
import com.google.javascript.jscomp.CompilerOptions;
import com.google.javascript.jscomp.CompilerOptions.LanguageMode;
import com.google.javascript.jscomp.DiagnosticGroups;
import com.google.javascript.jscomp.PropertyRenamingPolicy;
import com.google.javascript.jscomp.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Joins the modules of a pack's scripts and makes them small: one file for each page that has scripts.
 *
 * <p>Usage: {@code java -cp closure-compiler.jar src/build/PackScripts.java TARGET_FOLDER}. The build runs it, so that
 * the program itself has no such library. It does nothing while what it made is newer than the modules.
 */
class PackScripts {

  private static final Path SOURCES = Path.of("src/main/scripts");
  private static final Pattern IMPORT = Pattern.compile("(?m)^import .*'\\./(\\w[\\w-]*\\.js)';$");

  /** The first module of each file, and the modules that others stand for in it. */
  private static final Map<String, Map<String, String>> FILES = Map.of("pack.js", Map.of("trees.js", "one-tree.js"),
      "library.js", Map.of(), "index.js", Map.of(), "practice.js", Map.of(), "sw.js", Map.of());

  private final Map<String, String> stand;
  private final Map<String, SourceFile> modules = new LinkedHashMap<>();

  private PackScripts(Map<String, String> stand) {
    this.stand = stand;
  }

  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    for (var file : FILES.entrySet()) {
      Path made = folder.resolve(file.getKey().replace(".js", ".min.js"));
      if (!isCurrent(made)) {
        Files.writeString(made, new PackScripts(file.getValue()).joined(file.getKey()));
      }
    }
  }

  private static boolean isCurrent(Path made) throws IOException {
    if (!Files.exists(made)) {
      return false;
    }
    try (var sources = Files.list(SOURCES)) {
      long newest = sources.mapToLong(source -> source.toFile().lastModified()).max().orElseThrow();
      return made.toFile().lastModified() > newest;
    }
  }

  private String joined(String first) throws IOException {
    add(first);
    var compiler = new Compiler();
    var result = compiler.compile(List.of(), List.copyOf(modules.values()), options());
    if (!result.success) {
      throw new IllegalStateException("the scripts of packs do not compile: see above");
    }
    return compiler.toSource();
  }

  /** What a module imports comes before it. */
  private void add(String name) throws IOException {
    if (modules.containsKey(name)) {
      return;
    }
    String code = Files.readString(SOURCES.resolve(stand.getOrDefault(name, name)));
    for (Matcher imported = IMPORT.matcher(code); imported.find();) {
      add(imported.group(1));
    }
    modules.put(name, SourceFile.fromCode(name, code));
  }

  /** Names of properties stay: the page, the record's format and the browser know them. */
  private static CompilerOptions options() {
    var options = new CompilerOptions();
    CompilationLevel.ADVANCED_OPTIMIZATIONS.setOptionsForCompilationLevel(options);
    options.setLanguage(LanguageMode.ECMASCRIPT_2020);
    options.setEmitUseStrict(true);
    options.setPropertyRenaming(PropertyRenamingPolicy.OFF);
    options.setDisambiguateProperties(false);
    options.setAmbiguateProperties(false);
    options.setRemoveUnusedPrototypeProperties(false);
    options.setInlineProperties(false);
    // the scripts have no types, and the linter knows the browser's names
    options.setCheckTypes(false);
    options.setWarningLevel(DiagnosticGroups.CHECK_TYPES, CheckLevel.OFF);
    options.setWarningLevel(DiagnosticGroups.UNDEFINED_VARIABLES, CheckLevel.OFF);
    options.setOutputCharset(StandardCharsets.UTF_8);
    options.setLineLengthThreshold(Integer.MAX_VALUE);
    return options;
  }
}
