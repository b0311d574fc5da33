package rungbook.system.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.ControlSystem.SightCondition;
import rungbook.system.ControlSystem;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.FaultPair;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.QuantityRanges;
import rungbook.system.Terminal;
import rungbook.system.TerminalStrip;
import rungbook.system.Vocabulary;
import rungbook.system.pairs.FaultPairReader;
import rungbook.system.quantity.QuantityReader;
import rungbook.system.sight.ShownSights;
import rungbook.system.sight.SightReader;
import rungbook.system.variant.VariantDocument;
import rungbook.system.variant.VariantText;

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
  private final BaseLines base;
  private final BaseLines here;

  /** @param base the lines to take over */
  private SystemReader(Document document, Vocabulary vocabulary, ConditionNames names, BaseLines base) {
    this.document = document;
    this.vocabulary = vocabulary;
    this.problems = new SystemProblems(document.source());
    this.terminals = new Terminals(vocabulary, problems);
    this.conditions = new ConditionReader(vocabulary, problems, names);
    this.base = base;
    this.here = BaseLines.none(vocabulary, names);
  }

  /**
   * A system as far as it could be read; a proof requires that no problem is an error.
   *
   * @param problems excluding those of the document
   */
  public record Read(ControlSystem system, List<Problem> problems) {}

  /** A system of which each line was read, before it is checked as a whole. */
  record Lines(Document document, BaseLines lines, SystemProblems problems) {

    ControlSystem system() {
      return lines.system();
    }

    Read checked() {
      SystemChecks.inspect(system(), document, problems);
      return new Read(system(), problems.all().stream().sorted(Problem.IN_READING_ORDER).toList());
    }
  }

  /** Reads the base, without the changes of its variants. */
  static Lines lines(String id, Document document) {
    Vocabulary words = VocabularyReader.read(id, document);
    ConditionNames names = ConditionNames.of(document, "");
    return new SystemReader(document, words, names, BaseLines.none(words, names)).read(entry -> false);
  }

  /**
   * Reads the lines of a variant that differ from those of the base, or in which a name means something else. Leaves
   * out the faults of the base that the variant cannot have: in parts that it does not have, and between points at
   * which none of its parts ends.
   */
  static Lines lines(Document document, VariantText variant, BaseLines base) {
    Document merged = VariantDocument.of(document, variant);
    Vocabulary words = VocabularyReader.read(merged, variant, base.system().vocabulary());
    ConditionNames names = ConditionNames.of(merged, variant.key());
    boolean isSamePoints = words.points().equals(base.system().vocabulary().points());
    return new SystemReader(merged, words, names, isSamePoints ? base : BaseLines.none(words, names))
        .read(entry -> !variant.has(entry.keySpan()));
  }

  /** @param mayGo whether a fault is left out if the system cannot have it */
  private Lines read(Predicate<Entry> mayGo) {
    if (document.entries("parts").count() > MOST_PARTS) {
      problems.add(TOO_MANY_PARTS, document.blocks("parts").get(0).kindSpan(), "most", MOST_PARTS);
      return new Lines(document, here, problems);
    }
    Set<String> changed = base.names().changed(here.names());
    var partReader = new PartReader(terminals, conditions, problems);
    List<Part> parts = document.entries("parts").flatMap(entry -> part(entry, changed, partReader).stream()).toList();
    List<SightCondition> sights = sights(changed);
    List<TerminalStrip> strips = strips();
    List<QuantityRanges> quantities = quantities();
    var withParts = new ControlSystem(vocabulary, parts, List.of(), sights, strips);
    document.entries("assemblies").flatMap(entry -> entry.items().stream()).forEach(this::member);
    Set<String> gone = new HashSet<>();
    List<Fault> faults = faults(withParts, mayGo, gone);
    Vocabulary words = VocabularyReader.without(gone, vocabulary, document);
    List<SightCondition> seen = ShownSights.with(sights, vocabulary, faults);
    var system = new ControlSystem(words, parts, faults, seen, strips, pairs(faults), quantities);
    return new Lines(document, here.of(system), problems);
  }

  private List<FaultPair> pairs(List<Fault> faults) {
    var found = new Problems();
    Set<String> keys = faults.stream().map(Fault::key).collect(Collectors.toSet());
    List<FaultPair> pairs = FaultPairReader.read(document, vocabulary, keys, found);
    found.all().forEach(problems::add);
    return pairs;
  }

  private Optional<Part> part(Entry entry, Set<String> changed, PartReader reader) {
    Optional<Part> part = base.parts().find(entry, changed).or(() -> reader.read(entry));
    Set<String> asked = conditions.takeAsked();
    part.ifPresent(read -> here.parts().keep(entry, read, asked));
    return part;
  }

  private List<SightCondition> sights(Set<String> changed) {
    var reader = new SightReader(vocabulary, conditions::read, document.source(), problems::add);
    return document.entries("sights").flatMap(entry -> {
      List<SightCondition> sight = base.sights().find(entry, changed).orElseGet(() -> reader.read(entry));
      here.sights().keep(entry, sight, conditions.takeAsked());
      return sight.stream();
    }).toList();
  }

  private List<QuantityRanges> quantities() {
    var reader = new QuantityReader(vocabulary, conditions::read, document.source(), problems::add);
    List<QuantityRanges> read = document.entries("quantities").flatMap(entry -> reader.read(entry).stream()).toList();
    conditions.takeAsked();
    return read;
  }

  private List<TerminalStrip> strips() {
    var stripReader = new StripReader(vocabulary, terminals, problems);
    return document.entries("strips").flatMap(entry -> stripReader.read(entry).stream()).toList();
  }

  private void member(Entry.Item item) {
    Vocabulary.Part named = vocabulary.parts().get(Names.key(item.text()));
    if (named == null || named.kind().equals("assembly")) {
      problems.unknown(ASSEMBLY_WITHOUT_PART, item.span(), item.text(), document.entries("parts").map(Entry::key)
          .toList());
    }
  }

  /** @param gone takes the keys of the faults that are left out */
  private List<Fault> faults(ControlSystem withParts, Predicate<Entry> mayGo, Set<String> gone) {
    var reader = new FaultReader(withParts, terminals, conditions, problems);
    Set<String> changed = base.changedParts(withParts.parts());
    changed.addAll(base.names().changed(here.names()));
    Set<Terminal> ends = withParts.parts().stream().flatMap(part -> part.branches().stream())
        .flatMap(branch -> Stream.of(branch.a(), branch.b())).collect(Collectors.toSet());
    List<Fault> faults = new ArrayList<>();
    document.entries("faults").forEach(entry -> {
      SystemProblems.Mark before = problems.mark();
      Fault fault = base.faults().find(entry, changed).orElseGet(() -> reader.read(entry));
      here.faults().keep(entry, fault, reader.takeAsked());
      if (mayGo.test(entry) && (lacksPart(before) || !endsAt(fault, ends))) {
        problems.backTo(before);
        gone.add(fault.key());
      } else {
        faults.add(fault);
      }
    });
    return faults;
  }

  private boolean lacksPart(SystemProblems.Mark before) {
    return problems.since(before).stream().anyMatch(problem -> problem.code().equals(FaultyParts.FAULT_WITHOUT_PART));
  }

  /** Whether some part ends at each of the points that a fault joins. */
  private static boolean endsAt(Fault fault, Set<Terminal> ends) {
    return fault.effects().stream().noneMatch(effect -> effect instanceof Effect.Join join
        && !(ends.contains(join.a()) && ends.contains(join.b())));
  }
}
