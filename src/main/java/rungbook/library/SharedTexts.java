package rungbook.library;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Supplier;
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
import rungbook.system.reader.VocabularyReader;
import rungbook.tree.Caution;
import rungbook.tree.Meter;
import rungbook.tree.Qualification;
import rungbook.tree.Shared;
import rungbook.tree.reader.CautionReader;
import rungbook.tree.reader.Fragments;
import rungbook.tree.reader.MeterReader;
import rungbook.tree.reader.QualificationReader;
import rungbook.tree.reader.StepKeys;

/** Reads the shared texts of a library. */
final class SharedTexts {

  private static final String SYSTEMS = "shared/systems/";

  private final LibraryText text;
  private final Problems problems = new Problems();
  private final List<Document> documents = new ArrayList<>();

  private SharedTexts(LibraryText text) {
    this.text = text;
  }

  /** @param documents every text that was read */
  record Read(Shared shared, List<Document> documents, List<Problem> problems) {}

  static Read read(LibraryText text) {
    SharedTexts reader = new SharedTexts(text);
    Shared shared = reader.read();
    return new Read(shared, reader.documents, reader.problems.all());
  }

  /** Reads each text when a tree first needs it, without reporting its problems. */
  static Shared asNeeded(LibraryText text) {
    SharedTexts reader = new SharedTexts(text);
    // the words of a system are all that trees ask for; only a pack draws its parts
    return reader.shared(reader::later, reader.later(SYSTEMS, VocabularyReader::read),
        reader.later(SYSTEMS, VariantsReader::systems), (id, fragment) -> fragment);
  }

  private Shared read() {
    Map<String, SystemVariants> circuits = now(SYSTEMS, this::system);
    var words = new HashMap<String, Vocabulary>();
    circuits.forEach((key, system) -> words.put(key, system.base().vocabulary()));
    return shared(this::now, words, circuits, this::fragment);
  }

  private Shared shared(Take take, Map<String, Vocabulary> systems, Map<String, SystemVariants> circuits,
      BiFunction<String, Document, Document> fragment) {
    return new Shared(systems, circuits, take.from("shared/meters/", this::meter),
        take.from("shared/cautions/", this::caution), take.from("shared/qualifications/", this::qualification),
        take.from("shared/fragments/", fragment), text.in("trees/").keySet());
  }

  private <T> Map<String, T> now(String folder, BiFunction<String, Document, T> read) {
    var found = new HashMap<String, T>();
    text.in(folder).forEach((id, source) -> found.put(Names.key(id), read(id, source, (name, document) -> {
      documents.add(document);
      problems.addAll(document.problems());
      needTitle(document);
      return read.apply(name, document);
    })));
    return found;
  }

  private <T> Map<String, T> later(String folder, BiFunction<String, Document, T> read) {
    var values = new HashMap<String, Supplier<T>>();
    text.in(folder).forEach((id, source) -> values.put(Names.key(id), () -> read(id, source, read)));
    return new ReadAsNeeded<>(values);
  }

  private static <T> T read(String id, Source source, BiFunction<String, Document, T> read) {
    return Guarded.read(source, () -> read.apply(id, DocumentReader.read(source)),
        problem -> read.apply(id, Document.refused(source, problem, TextLimits.inForce())));
  }

  /** How a folder's texts are read: at once or later. */
  private interface Take {
    <T> Map<String, T> from(String folder, BiFunction<String, Document, T> read);
  }

  private void needTitle(Document document) {
    if (document.unread().isEmpty() && document.front("title").isEmpty()) {
      problems.add(StepKeys.missing("title", "the front matter", document.source(), document.frontSpan()));
    }
  }

  private SystemVariants system(String id, Document document) {
    VariantsReader.Read read = VariantsReader.read(id, document);
    problems.addAll(read.problems());
    return read.systems();
  }

  private Document fragment(String id, Document document) {
    problems.addAll(Fragments.inspect(document));
    return document;
  }

  private Meter meter(String id, Document document) {
    MeterReader.Read read = MeterReader.read(id, document);
    problems.addAll(read.problems());
    return read.meter();
  }

  private Qualification qualification(String id, Document document) {
    return QualificationReader.read(id, document, problems);
  }

  private Caution caution(String id, Document document) {
    return CautionReader.read(id, document, problems);
  }
}
