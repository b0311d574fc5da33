package rungbook.library;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import rungbook.library.lookup.ReadAsNeeded;
import rungbook.library.lookup.Uses;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.TextLimits;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;
import rungbook.system.reader.VariantsReader;
import rungbook.tree.Meter;
import rungbook.tree.Shared;
import rungbook.tree.reader.CautionReader;
import rungbook.tree.reader.Fragments;
import rungbook.tree.reader.MeterReader;
import rungbook.tree.reader.QualificationReader;
import rungbook.tree.reader.StepKeys;

/** Reads the shared texts of a library. */
final class SharedTexts {

  private final LibraryText text;
  private final Map<String, ReadText> before;
  private final Map<String, ReadText> read = new TreeMap<>();

  private SharedTexts(LibraryText text, Map<String, ReadText> before) {
    this.text = text;
    this.before = before;
  }

  /**
   * One text as it was read.
   *
   * @param value what trees use of it
   */
  record ReadText(Document document, Object value, List<Problem> problems) {}

  /** @param texts every text that was read, by path */
  record Read(Shared shared, Map<String, ReadText> texts) {

    List<Document> documents() {
      return texts.values().stream().map(ReadText::document).toList();
    }

    List<Problem> problems() {
      return texts.values().stream().flatMap(one -> one.problems().stream()).toList();
    }
  }

  /** @param before what was read of a library before; taken over where the text is still the same */
  static Read read(LibraryText text, Map<String, ReadText> before) {
    SharedTexts reader = new SharedTexts(text, before);
    return new Read(reader.read(), reader.read);
  }

  /** Reads each text when a tree first needs it, without reporting its problems. */
  static Shared asNeeded(LibraryText text) {
    SharedTexts reader = new SharedTexts(text, Map.of());
    Map<String, SystemVariants> circuits = reader.later(Uses.SYSTEMS,
        (id, system, out) -> VariantsReader.systems(id, system));
    var words = new HashMap<String, Supplier<Vocabulary>>();
    circuits.keySet().forEach(key -> words.put(key,
        () -> Objects.requireNonNull(circuits.get(key)).base().vocabulary()));
    return reader.shared(reader::later, new ReadAsNeeded<>(words), circuits, (id, fragment, out) -> fragment);
  }

  private Shared read() {
    Map<String, SystemVariants> circuits = now(Uses.SYSTEMS, SharedTexts::system);
    var words = new HashMap<String, Vocabulary>();
    circuits.forEach((key, system) -> words.put(key, system.base().vocabulary()));
    return shared(this::now, words, circuits, SharedTexts::fragment);
  }

  private Shared shared(Take take, Map<String, Vocabulary> systems, Map<String, SystemVariants> circuits,
      Reader<Document> fragment) {
    return new Shared(systems, circuits, take.from(Uses.METERS, SharedTexts::meter),
        take.from(Uses.CAUTIONS, CautionReader::read), take.from(Uses.QUALIFICATIONS, QualificationReader::read),
        take.from(Uses.FRAGMENTS, fragment), text.in(Uses.TREES).keySet());
  }

  private <T> Map<String, T> now(String folder, Reader<T> reader) {
    var found = new HashMap<String, T>();
    text.in(folder).forEach((id, source) -> found.put(Names.key(id), now(id, source, reader)));
    return found;
  }

  @SuppressWarnings("unchecked") // the texts of one folder are read by one reader
  private <T> T now(String id, Source source, Reader<T> reader) {
    ReadText known = before.get(source.name());
    ReadText now = known != null && known.document().source().text().equals(source.text()) ? known
        : read(source, document -> fresh(id, document, reader));
    read.put(source.name(), now);
    return (T) now.value();
  }

  private static <T> ReadText fresh(String id, Document document, Reader<T> reader) {
    Problems problems = new Problems();
    problems.addAll(document.problems());
    if (document.unread().isEmpty() && document.front("title").isEmpty()) {
      problems.add(StepKeys.missing("title", "the front matter", document.source(), document.frontSpan()));
    }
    T value = reader.read(id, document, problems);
    return new ReadText(document, value, problems.all());
  }

  private <T> Map<String, T> later(String folder, Reader<T> reader) {
    var values = new HashMap<String, Supplier<T>>();
    text.in(folder).forEach((id, source) -> values.put(Names.key(id),
        () -> read(source, document -> reader.read(id, document, new Problems()))));
    return new ReadAsNeeded<>(values);
  }

  private static <T> T read(Source source, Function<Document, T> read) {
    return Guarded.read(source, () -> read.apply(DocumentReader.read(source)),
        problem -> read.apply(Document.refused(source, problem, TextLimits.inForce())));
  }

  /** Reads one kind of shared text. */
  private interface Reader<T> {
    T read(String id, Document document, Problems problems);
  }

  /** How a folder's texts are read: at once or later. */
  private interface Take {
    <T> Map<String, T> from(String folder, Reader<T> reader);
  }

  private static SystemVariants system(String id, Document document, Problems problems) {
    VariantsReader.Read read = VariantsReader.read(id, document);
    problems.addAll(read.problems());
    return read.systems();
  }

  private static Document fragment(String id, Document document, Problems problems) {
    problems.addAll(Fragments.inspect(document));
    return document;
  }

  private static Meter meter(String id, Document document, Problems problems) {
    MeterReader.Read read = MeterReader.read(id, document);
    problems.addAll(read.problems());
    return read.meter();
  }
}
