package rungbook.pack.onefile;

import java.util.LinkedHashMap;
import java.util.Map;
import rungbook.pack.circuit.CircuitPictures;
import rungbook.pack.page.TreeText;
import rungbook.system.SystemVariants;

/** The circuits of the trees of a file, each in it once. */
final class LibraryCircuits {

  private final Map<String, CircuitPictures> bySystem = new LinkedHashMap<>();

  CircuitPictures of(SystemVariants systems) {
    return bySystem.computeIfAbsent(systems.base().vocabulary().id(),
        any -> CircuitPictures.shared(systems, ":c" + (char) ('a' + bySystem.size())));
  }

  /** The ladders of the systems that some tree has shown. */
  String ladders() {
    var html = new StringBuilder();
    bySystem.values().forEach(circuit -> html.append(TreeText.ladder(circuit)));
    return html.toString();
  }
}
