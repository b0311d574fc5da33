package rungbook.library;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rungbook.circuit.Samples;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.proof.DictionaryInstallations;
import rungbook.proof.Installations;
import rungbook.proof.Proving;
import rungbook.source.Source;
import rungbook.system.SystemReader;
import rungbook.system.Walks;
import rungbook.tree.Tree;

/**
 * Proves trees on the systems of a library. What was solved of a system is kept for as long as its text stays the same, so the
 * second proof of a tree costs little; of many systems those last used are kept. Threads may share one.
 */
public final class Prover {

  private static final int MOST_KEPT = 8;

  private final int drawn;
  private final Map<String, Prepared> systems = new LinkedHashMap<>(16, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<String, Prepared> eldest) {
      return size() > MOST_KEPT;
    }
  };

  private record Prepared(Source source, Optional<Installations> installations, Walks walks) {}

  /** @param drawn how many installations are drawn at random, {@link Samples#USUAL} as a rule */
  public Prover(int drawn) {
    this.drawn = drawn;
  }

  /** @param others the other trees of the library, by id */
  public Proving.Result prove(Tree tree, LibraryText text, Function<String, Optional<Tree>> others) {
    if (tree.system().isEmpty()) {
      return Proving.unproved(tree, "it names no system");
    }
    String id = tree.system().get().id();
    Source source = text.in("shared/systems/").get(id);
    Prepared prepared = source == null ? new Prepared(null, Optional.empty(), Walks.NONE) : prepared(id, source);
    return prepared.installations().map(installations -> Proving.prove(tree, installations, prepared.walks(), others))
        .orElseGet(() -> Proving.unproved(tree, "the circuit of its system cannot be built: check `shared/systems/" + id + ".md`"));
  }

  private synchronized Prepared prepared(String id, Source source) {
    Prepared known = systems.get(id);
    if (known == null || !known.source().text().equals(source.text())) {
      known = prepare(id, source);
      systems.put(id, known);
    }
    return known;
  }

  private Prepared prepare(String id, Source source) {
    Document document = DocumentReader.read(source);
    SystemReader.Read read = SystemReader.read(id, document);
    boolean fit = read.problems().isEmpty() && !read.system().parts().isEmpty();
    Optional<Installations> installations = fit ? Optional.of(DictionaryInstallations.of(read.system(), drawn)) : Optional.empty();
    return new Prepared(source, installations, Walks.read(document));
  }
}
