package rungbook.tree.reader;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.action.EquipmentCondition;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;
import rungbook.system.Vocabulary;
import rungbook.system.hazard.ElectricalHazards;
import rungbook.system.remedy.RemedyFinder;
import rungbook.tree.Action;
import rungbook.tree.Meter;
import rungbook.tree.Shared;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * Builds a tree from a document. There is always a tree, as complete as the text allows; the problems say what is
 * missing.
 */
public final class TreeReader {

  static final Code FILE_EMPTY = Code.of("file-empty");
  static final Code NO_STEP = Code.of("no-step");
  public static final Code UNKNOWN_METER = Code.of("unknown-meter");
  public static final Code UNKNOWN_SYSTEM = Code.of("unknown-system");
  public static final Code UNKNOWN_VARIANT = Code.of("unknown-variant");

  static final String NOT_FOR = "not for";

  private final String id;
  private final Document document;
  private final Shared shared;
  private final Problems problems = new Problems();

  private TreeReader(String id, Document document, Shared shared) {
    this.id = id;
    this.document = document;
    this.shared = shared;
  }

  /** @param problems including those of the text itself */
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
      problems.add(Problem.at(FILE_EMPTY, document.source(), Span.at(0)));
      return new Read(tree(List.of(), Optional.empty()), problems.all());
    }
    StepKeys.inspect(document.front(), StepKeys.FRONT, "front matter", document.source(), problems);
    document.front("exits").ifPresent(
        exits -> problems.add(Problem.at(FragmentExpander.EXIT_OUTSIDE_FRAGMENT, document.source(), exits.keySpan())));
    var system = named("system", UNKNOWN_SYSTEM, shared.systems());
    List<UnresolvedStep> unresolvedSteps = FragmentExpander.of(document, shared, problems);
    if (unresolvedSteps.isEmpty() && document.unread().isEmpty()) {
      problems.add(Problem.at(NO_STEP, document.source(), Span.at(document.source().text().length())));
    }
    LinkResolver links = new LinkResolver(unresolvedSteps, shared, problems);
    List<Step> steps = unresolvedSteps.stream()
        .map(unresolved -> StepReader.read(unresolved, links, shared, system, problems)).toList();
    return new Read(tree(steps, system), problems.all());
  }

  private Tree tree(List<Step> steps, Optional<Vocabulary> system) {
    boolean empty = document.source().text().isBlank();
    Optional<Meter> meter = named("meter", UNKNOWN_METER, shared.meters());
    Optional<SystemVariants> known = system.flatMap(words -> named("system", shared.circuits()));
    List<Variant> notFor = notFor(known);
    Optional<SystemVariants> circuits = known
        .map(all -> all.without(notFor.stream().map(Variant::key).collect(Collectors.toSet())));
    return new Tree(id, empty ? id : needed("title").orElse(id), empty ? "" : needed("complaint").orElse(""),
        SymptomsReader.read(document, system, problems), document, system, circuits, notFor,
        circuits.filter(any -> Tree.hasRepairs(steps)).map(RemedyFinder::of).orElse(Map.of()),
        circuits.filter(any -> worksDead(steps)).map(ElectricalHazards::of).orElse(ElectricalHazards.NONE),
        shared.cautions().keySet(), meter.orElse(shared.usualMeter()), steps);
  }

  /** The variants that the front matter leaves out. */
  private List<Variant> notFor(Optional<SystemVariants> system) {
    List<Variant> known = system.map(SystemVariants::variants).orElse(List.of());
    return document.front(NOT_FOR).stream().flatMap(entry -> entry.items().stream())
        .flatMap(item -> variant(item, known).stream()).toList();
  }

  private Optional<Variant> variant(Entry.Item item, List<Variant> known) {
    Optional<Variant> found = known.stream().filter(one -> one.key().equals(Names.key(item.text()))).findFirst();
    if (found.isEmpty()) {
      List<String> names = known.stream().map(Variant::name).toList();
      problems.add(Problem.at(UNKNOWN_VARIANT, document.source(), item.span()).with("name", item.text())
          .with("known", names.isEmpty() ? "none" : String.join(", ", names))
          .near(item.text(), Nearest.to(item.text(), names)));
    }
    return found;
  }

  private static boolean worksDead(List<Step> steps) {
    return steps.stream().anyMatch(step -> step.actions().stream().anyMatch(TreeReader::needsDead)
        || (step instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit()));
  }

  private static boolean needsDead(Action action) {
    return action.touches() || action.kind().begins(EquipmentCondition.PROVED_DEAD)
        || action.kind().begins(EquipmentCondition.DISCHARGED);
  }

  private Optional<String> needed(String key) {
    Optional<Entry> entry = document.front(key);
    if (entry.isEmpty() && document.unread().isEmpty()) {
      problems.add(StepKeys.missing(key, "the front matter", document.source(), document.frontSpan()));
    }
    return entry.map(Entry::value).filter(value -> !value.isEmpty());
  }

  private <T> Optional<T> named(String key, Map<String, T> known) {
    return document.front(key).flatMap(name -> Optional.ofNullable(known.get(Names.key(name.value()))));
  }

  private <T> Optional<T> named(String key, Code code, Map<String, T> known) {
    Optional<Entry> entry = document.front(key);
    Optional<T> found = named(key, known);
    if (entry.isPresent() && found.isEmpty()) {
      report(code, entry.get(), known.keySet());
    }
    return found;
  }

  private void report(Code code, Entry entry, Collection<String> known) {
    List<String> fileNames = known.stream().sorted().map(name -> name.replace(' ', '-')).toList();
    problems.add(Problem.at(code, document.source(), entry.valueSpan()).with("name", entry.value())
        .with("known", String.join(", ", fileNames)).near(entry.value(), Nearest.to(entry.value(), fileNames)));
  }
}
