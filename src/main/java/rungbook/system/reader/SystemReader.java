package rungbook.system.reader;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.TerminalStrip;
import rungbook.system.Vocabulary;
import rungbook.system.reader.PartKind.Asked;

/** Reads a system's text: vocabulary, parts, faults and sights, and their problems. */
public final class SystemReader {

  static final Code ASSEMBLY_WITHOUT_PART = Code.of("assembly-without-part");
  static final Code TOO_MANY_PARTS = Code.of("too-many-parts");

  /** More parts than any control circuit has; so many are proved in 512 MB. */
  public static final int MOST_PARTS = 1_000;

  private final Document document;
  private final Vocabulary vocabulary;
  private final SystemProblems problems;
  private final Terminals terminals;
  private final ConditionReader conditions;

  private SystemReader(String id, Document document, String variant) {
    this.document = document;
    this.vocabulary = VocabularyReader.read(id, document);
    this.problems = new SystemProblems(document.source());
    this.terminals = new Terminals(vocabulary, problems);
    this.conditions = new ConditionReader(vocabulary, problems, keysOf(Asked.POSITION), keysOf(Asked.OPERATION),
        keysOf(Asked.STATE), variants(variant));
  }

  /** Which variants the system states, and whether the text is that of this one. */
  private Map<String, Boolean> variants(String variant) {
    return entries("variants").map(entry -> Names.key(entry.key())).distinct()
        .collect(toMap(key -> key, key -> key.equals(variant)));
  }

  /**
   * A system as far as it could be read; a proof requires that no problem is an error.
   *
   * @param problems excluding those of the document
   */
  public record Read(ControlSystem system, List<Problem> problems) {}

  /** Reads the base, without the changes of its variants. */
  public static Read read(String id, Document document) {
    return read(id, document, "");
  }

  /**
   * Reads one variant.
   *
   * @param document with the changes of the variant
   * @param variant its key
   */
  public static Read read(String id, Document document, String variant) {
    var reader = new SystemReader(id, document, variant);
    ControlSystem system = reader.read();
    SystemChecks.inspect(system, document, reader.problems);
    return new Read(system, reader.problems.all().stream().sorted(Problem.IN_READING_ORDER).toList());
  }

  private ControlSystem read() {
    if (entries("parts").count() > MOST_PARTS) {
      var block = document.blocks("parts").get(0);
      problems.add(TOO_MANY_PARTS, block.kindSpan(), "most", MOST_PARTS);
      return new ControlSystem(vocabulary, List.of(), List.of(), List.of(), List.of());
    }
    var partReader = new PartReader(terminals, conditions, problems);
    List<Part> parts = entries("parts").flatMap(entry -> partReader.read(entry).stream()).toList();
    List<ControlSystem.SightCondition> sights = entries("sights").flatMap(entry -> sight(entry).stream()).toList();
    var stripReader = new StripReader(vocabulary, terminals, problems);
    List<TerminalStrip> strips = entries("strips").flatMap(entry -> stripReader.read(entry).stream()).toList();
    var withParts = new ControlSystem(vocabulary, parts, List.of(), sights, strips);
    entries("assemblies").flatMap(entry -> entry.items().stream()).forEach(this::member);
    var faultReader = new FaultReader(withParts, terminals, problems);
    return new ControlSystem(vocabulary, parts, entries("faults").map(faultReader::read).toList(), sights,
        strips);
  }

  private void member(Entry.Item item) {
    Vocabulary.Part named = vocabulary.parts().get(Names.key(item.text()));
    if (named == null || named.kind().equals("assembly")) {
      problems.unknown(ASSEMBLY_WITHOUT_PART, item.span(), item.text(),
          entries("parts").map(Entry::key).toList());
    }
  }

  private Optional<ControlSystem.SightCondition> sight(Entry entry) {
    return entry.items().stream().filter(item -> item.text().startsWith("when ")).findFirst()
        .map(item -> new Entry.Item(item.text().substring(5), item.span()))
        .map(item -> new ControlSystem.SightCondition(entry.key(), conditions.read(item)));
  }

  private Stream<Entry> entries(String kind) {
    return document.blocks(kind).stream().flatMap(block -> block.entries().stream());
  }

  private Set<String> keysOf(Asked asked) {
    return entries("parts").filter(entry -> PartKind.of(entry).filter(kind -> kind.asked() == asked).isPresent())
        .map(entry -> Names.key(entry.key())).collect(toSet());
  }
}
