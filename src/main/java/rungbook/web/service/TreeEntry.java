package rungbook.web.service;

import rungbook.library.CompiledTree;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.text.UrlPath;

/**
 * A tree in a list.
 *
 * @param system the system's title; empty when the tree names none
 */
public record TreeEntry(String path, String title, String complaint, String system, int steps, long errors,
    long warnings, boolean sound) {

  public static TreeEntry of(CompiledTree compiled) {
    var tree = compiled.tree();
    return new TreeEntry(compiled.path(), title(compiled), tree.complaint(),
        tree.system().map(s -> s.title()).orElse(""),
        tree.steps().size(), count(compiled, Severity.ERROR), count(compiled, Severity.WARNING), compiled.isSound());
  }

  public static String title(CompiledTree compiled) {
    return compiled.tree().title().isBlank() ? compiled.tree().id() : compiled.tree().title();
  }

  private static long count(CompiledTree compiled, Severity severity) {
    return compiled.problems().stream().filter(problem -> Wording.of(problem).severity() == severity).count();
  }

  public String href() {
    return "/tree/" + UrlPath.of(path);
  }
}
