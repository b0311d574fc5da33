package rungbook.web.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.library.CompiledTree;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.source.Source;

class PerTreeTest {
  private static final String TEXT = "---\ntitle: One\ncomplaint: x\n---\n\n## Fine\n\n```finding\nhealthy: yes\n```\n";
  private final PerTree<String> kept = new PerTree<>();
  private final List<String> made = new ArrayList<>();

  private String ask(CompiledTree tree, String variant) {
    return kept.of(tree, variant, () -> {
      made.add(tree.path() + variant);
      return tree.path() + variant;
    });
  }

  private static CompiledTree compiled(String id) {
    var text = new java.util.TreeMap<String, Source>();
    text.put("trees/" + id + ".md", new Source("trees/" + id + ".md", TEXT));
    return LibraryCompiler.compile(new LibraryText(text, new java.util.TreeMap<>(), List.of())).trees().get(0);
  }

  @Test
  void theSametereIsAskedForOnce() {
    var tree = compiled("a");
    assertEquals(List.of("trees/a.md1", "trees/a.md1"), List.of(ask(tree, "1"), ask(tree, "1")));
    assertEquals(List.of("trees/a.md1"), made);
  }

  @Test
  void aTreeCompiledAnewOrAnotherEditionIsMadeAnew() {
    ask(compiled("a"), "1");
    var again = compiled("a");
    ask(again, "1");
    ask(again, "2");
    assertEquals(3, made.size());
  }

  @Test
  void eachTreeHasItsOwn() {
    var one = compiled("a");
    var other = compiled("b");
    assertEquals(List.of("trees/a.md", "trees/b.md", "trees/a.md"),
        List.of(ask(one, ""), ask(other, ""), ask(one, "")));
    assertEquals(2, made.size());
  }
}
