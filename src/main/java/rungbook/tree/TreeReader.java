package rungbook.tree;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Span;
import rungbook.system.Names;

/** Makes a tree of a document. There is always a tree, as far as the text could be read; the problems say what is missing. */
public final class TreeReader {

  private final String id;
  private final Document document;
  private final Shared shared;
  private final List<Problem> problems = new ArrayList<>();

  private TreeReader(String id, Document document, Shared shared) {
    this.id = id;
    this.document = document;
    this.shared = shared;
  }

  /** @param problems those of the text itself included */
  public record Read(Tree tree, List<Problem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** @param id the file's name without {@code .md} */
  public static Read read(String id, Document document, Shared shared) {
    return new TreeReader(id, document, shared).read();
  }

  private Read read() {
    problems.addAll(document.problems());
    if (document.source().text().isBlank()) {
      problems.add(Problem.at("file-empty", document.source(), Span.at(0)));
      return new Read(tree(List.of(), Optional.empty()), problems);
    }
    Keys.inspect(document.front(), Keys.FRONT, "front matter", document.source(), problems);
    document.front("exits").ifPresent(exits -> problems.add(Problem.at("exit-outside-fragment", document.source(), exits.keySpan())));
    var system = named("system", "unknown-system", shared.systems());
    List<Draft> drafts = Layout.of(document, shared, problems);
    if (drafts.isEmpty() && document.problems().isEmpty()) {
      problems.add(Problem.at("no-step", document.source(), Span.at(document.source().text().length())));
    }
    Links links = new Links(drafts, shared, problems);
    List<Step> steps = drafts.stream().map(draft -> StepReader.read(draft, links, shared, system, problems)).toList();
    return new Read(tree(steps, system), problems);
  }

  private Tree tree(List<Step> steps, Optional<rungbook.system.Vocabulary> system) {
    boolean empty = document.source().text().isBlank();
    Optional<Meter> meter = named("meter", "unknown-meter", shared.meters());
    return new Tree(id, empty ? id : needed("title").orElse(id), empty ? "" : needed("complaint").orElse(""), document, system,
        meter.orElse(shared.usualMeter()), steps);
  }

  private Optional<String> needed(String key) {
    Optional<Entry> entry = document.front(key);
    if (entry.isEmpty() && document.problems().isEmpty()) {
      problems.add(Problem.at("key-missing", document.source(), document.frontSpan()).with("key", key).with("where", "the front matter"));
    }
    return entry.map(Entry::value).filter(value -> !value.isEmpty());
  }

  private <T> Optional<T> named(String key, String code, Map<String, T> known) {
    Optional<Entry> entry = document.front(key);
    Optional<T> found = entry.flatMap(name -> Optional.ofNullable(known.get(Names.key(name.value()))));
    if (entry.isPresent() && found.isEmpty()) {
      report(code, entry.get(), known.keySet());
    }
    return found;
  }

  private void report(String code, Entry entry, Collection<String> known) {
    List<String> fileNames = known.stream().sorted().map(name -> name.replace(' ', '-')).toList();
    problems.add(Problem.at(code, document.source(), entry.valueSpan()).with("name", entry.value())
        .with("known", String.join(", ", fileNames)).near(Nearest.to(entry.value(), fileNames)));
  }
}
