package rungbook.system.reader;

import static java.util.stream.Collectors.toSet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;
import rungbook.system.quantity.QuantityLine;
import rungbook.system.remedy.ThingReader;
import rungbook.system.sight.PlaceWords;
import rungbook.system.sight.SightLine;
import rungbook.system.variant.VariantBlock;
import rungbook.system.variant.VariantText;

/**
 * Reads the vocabulary from a system's blocks. {@link SystemReader} reports their problems.
 */
public final class VocabularyReader {

  private static final Pattern VOLTS = Pattern.compile("(\\d+(?:\\.\\d+)?) V");

  private static final String CONDUCTOR = "conductor ";
  private static final String IN_ATTIC = "in attic";

  private static final String STAGE = "stage";

  private final Document document;
  private final Set<String> locations;

  private VocabularyReader(Document document) {
    this.document = document;
    this.locations = document.entries("locations").map(line -> Names.key(line.key())).collect(toSet());
  }

  public static Vocabulary read(String id, Document document) {
    return new VocabularyReader(document).read(id);
  }

  /**
   * Reads the vocabulary of a variant: what it does not change is that of the base.
   *
   * @param document with the changes of the variant
   */
  static Vocabulary read(Document document, VariantText variant, Vocabulary base) {
    var reader = new VocabularyReader(document);
    boolean otherParts = variant.changes("parts");
    boolean otherPoints = variant.changes("points");
    boolean otherAssemblies = otherParts || variant.changes("assemblies");
    return new Vocabulary(base.id(), base.title(), base.locations(), otherPoints ? reader.points() : base.points(),
        base.controls(), variant.changes("sights") ? reader.sights() : base.sights(),
        otherPoints || otherAssemblies ? reader.parts() : base.parts(),
        variant.changes("faults") ? reader.faults() : base.faults(),
        otherAssemblies ? reader.assemblies() : base.assemblies(),
        variant.changes("quantities") ? reader.quantities() : base.quantities());
  }

  /** The vocabulary of a variant without faults of the base that it cannot have; another variant may have one. */
  static Vocabulary without(Set<String> faults, Vocabulary words, Document document) {
    if (faults.isEmpty()) {
      return words;
    }
    Map<String, String> left = new LinkedHashMap<>(words.faults());
    left.keySet().removeAll(faults);
    ofVariants(document, "faults").filter(entry -> faults.contains(Names.key(entry.key())))
        .forEach(entry -> left.putIfAbsent(Names.key(entry.key()), entry.key()));
    return new Vocabulary(words.id(), words.title(), words.locations(), words.points(), words.controls(),
        words.sights(), words.parts(), left, words.assemblies(), words.quantities());
  }

  private Vocabulary read(String id) {
    String title = document.front("title").map(Entry::value).orElse(id);
    return new Vocabulary(id, title, lines("locations", this::location), points(), lines("controls", this::control),
        sights(), parts(), faults(), assemblies(), quantities());
  }

  private Map<String, Vocabulary.StatedQuantity> quantities() {
    Map<String, Vocabulary.StatedQuantity> found = new LinkedHashMap<>();
    entries("quantities").flatMap(entry -> QuantityLine.of(entry, locations).word().stream())
        .forEach(word -> found.putIfAbsent(Names.key(word.name()), word));
    return found;
  }

  private Map<String, Point> points() {
    return lines("points", this::point, VocabularyReader::join);
  }

  private Map<String, Vocabulary.Sight> sights() {
    return lines("sights", this::sight, VocabularyReader::join);
  }

  private Map<String, String> faults() {
    return lines("faults", Entry::key);
  }

  private Map<String, Set<String>> assemblies() {
    return lines("assemblies", entry -> items(entry).map(Names::key).collect(toSet()), VocabularyReader::join);
  }

  /**
   * The parts, each conductor of a cable by its own name, {@code Y outdoor cable}, the assemblies, and the things
   * outside the circuit that faults are in.
   */
  private Map<String, Part> parts() {
    var parts = lines("parts", this::part);
    entries("parts")
        .forEach(entry -> itemsWith(CONDUCTOR, entry).forEach(item -> {
          String name = item.substring(CONDUCTOR.length()).split(" to ", 2)[0].strip() + " " + entry.key();
          parts.put(Names.key(name), new Part(name, "conductor"));
        }));
    var points = lines("points", Entry::key);
    lines("assemblies", entry -> new Part(entry.key(), "assembly")).forEach((key, assembly) -> {
      if (!points.containsKey(key)) {
        parts.putIfAbsent(key, assembly);
      }
    });
    if (!parts.isEmpty()) {
      things().filter(name -> !points.containsKey(Names.key(name)))
          .forEach(name -> parts.putIfAbsent(Names.key(name), new Part(name, Vocabulary.OUTSIDE)));
    }
    return parts;
  }

  /** What faults are in that no line of parts has. */
  private Stream<String> things() {
    return entries("faults").filter(ThingReader::mayName).flatMap(entry -> entry.items().stream())
        .filter(ThingReader::isThing).map(ThingReader::name);
  }

  /** The lines of a block by key; the first of several with the same key. */
  private <T> Map<String, T> lines(String kind, Function<Entry, T> read) {
    return lines(kind, read, (first, second) -> first);
  }

  private <T> Map<String, T> lines(String kind, Function<Entry, T> read, BinaryOperator<T> join) {
    var found = new LinkedHashMap<String, T>();
    entries(kind).forEach(entry -> found.merge(Names.key(entry.key()), read.apply(entry), join));
    return found;
  }

  /** Those of the system, then those that only a variant has: a tree is for all of them. */
  private Stream<Entry> entries(String kind) {
    return Stream.concat(document.entries(kind), ofVariants(document, kind));
  }

  private static Stream<Entry> ofVariants(Document document, String kind) {
    return VariantBlock.in(document).filter(block -> block.lines().equals(kind)).flatMap(VariantBlock::changes);
  }

  private static Set<String> join(Set<String> first, Set<String> second) {
    return Stream.concat(first.stream(), second.stream()).collect(toSet());
  }

  /** A point where it is in any variant, at the highest of its voltages. */
  private static Point join(Point first, Point second) {
    boolean more = second.volts().orElse(0) > first.volts().orElse(0);
    return new Point(first.name(), join(first.locations(), second.locations()),
        more ? second.volts() : first.volts());
  }

  private Location location(Entry entry) {
    Optional<String> panel = items(entry).filter(item -> item.startsWith("panel "))
        .map(item -> item.substring(6).strip()).findFirst();
    return new Location(entry.key(), panel, items(entry).anyMatch(IN_ATTIC::equals));
  }

  private Point point(Entry entry) {
    OptionalDouble volts = items(entry).map(VOLTS::matcher).filter(Matcher::matches)
        .mapToDouble(match -> Double.parseDouble(match.group(1))).findFirst();
    return new Point(entry.key(), places(entry), volts);
  }

  private Part part(Entry entry) {
    return new Part(entry.key(), PartLine.kindWord(entry), items(entry).anyMatch(PartReader.WITH_CAPACITOR::equals),
        items(entry).anyMatch(PartReader.MANUAL_RESET::equals));
  }

  private Control control(Entry entry) {
    List<String> words = items(entry).toList();
    Role role = role(words);
    Set<String> places = places(entry);
    List<String> positions = role == Role.ISOLATOR || role == Role.INTERLOCK ? List.of()
        : words.stream().filter(word -> !word.startsWith("at ") && !places.contains(Names.key(word)))
            .filter(word -> !word.equals(STAGE)).map(Names::key).toList();
    return new Control(entry.key(), role, positions, places, words.contains("pull-out"));
  }

  private static Role role(List<String> words) {
    if (words.contains("isolates power")) {
      return Role.ISOLATOR;
    }
    return words.contains("interlock") ? Role.INTERLOCK : words.contains(STAGE) ? Role.STAGE : Role.SELECTOR;
  }

  /** A sight where it is in any variant, with the values of all. */
  private static Vocabulary.Sight join(Vocabulary.Sight first, Vocabulary.Sight second) {
    return new Vocabulary.Sight(first.name(), join(first.locations(), second.locations()),
        distinct(Stream.concat(first.values().stream(), second.values().stream())));
  }

  private static List<String> distinct(Stream<String> names) {
    var byKey = new LinkedHashMap<String, String>();
    names.forEach(name -> byKey.putIfAbsent(Names.key(name), name));
    return List.copyOf(byKey.values());
  }

  private Vocabulary.Sight sight(Entry entry) {
    SightLine line = SightLine.of(entry, locations);
    return new Vocabulary.Sight(entry.key(), line.places(),
        distinct(line.values().stream().map(SightLine.Value::name)));
  }

  private Set<String> places(Entry entry) {
    return PlaceWords.in(entry, locations);
  }

  private static Stream<String> items(Entry entry) {
    return entry.items().stream().map(Entry.Item::text);
  }

  /** The items that begin with a word. Takes apart only the lines that have the word. */
  private static Stream<String> itemsWith(String word, Entry entry) {
    return entry.value().contains(word) ? items(entry).filter(item -> item.startsWith(word)) : Stream.empty();
  }
}
