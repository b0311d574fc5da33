package rungbook.circuit.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.circuit.network.Samples;
import rungbook.system.SystemVariants;
import rungbook.text.JsonText;

/** A page with the solver of a practice page alone, and the data of a system. */
public final class PageSolver {

  private PageSolver() {}

  /** @param more script of a test */
  public static String page(SystemVariants systems, Samples samples, String more) throws IOException {
    var names = new Interned();
    Map<String, String> fields = new LinkedHashMap<>(CircuitExport.fields(systems, samples, Map.of(), names));
    fields.put("names", JsonText.array(names.all().stream().map(JsonText::string).toList()));
    return "<!doctype html><meta charset=utf-8><title>solver</title><script>" + script() + "\nvar data="
        + JsonText.object(fields) + ";\n" + more + "</script>";
  }

  /** The modules in the order in which they import each other, as one script. */
  private static String script() throws IOException {
    var modules = new StringBuilder("const rungbook = {};\n");
    for (String name : new String[] {"network", "circuit", "meter"}) {
      try (Stream<String> lines = Files.lines(Path.of("src/main/scripts", name + ".js"))) {
        modules.append("{\n").append(lines.filter(line -> !line.startsWith("import "))
            .map(line -> line.replaceFirst("^export function (\\w+)", "rungbook.$1 = $1; function $1"))
            .collect(Collectors.joining("\n")).replace("solve(", "rungbook.network(")).append("\n}\n");
      }
    }
    return modules.toString();
  }
}
