package rungbook.system.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.Effect;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.Variant;

/** Reads a system and its variants, each variant by the same code as the base. */
public final class VariantsReader {

  static final Code VARIANT_BREAKS_LINE = Code.of("variant-breaks-line");
  static final Code VARIANT_CHANGES_NOTHING = Code.of("variant-changes-nothing");

  private final String id;
  private final Document document;
  private final Problems problems = new Problems();

  private VariantsReader(String id, Document document) {
    this.id = id;
    this.document = document;
  }

  /**
   * A system as far as it could be read; a proof requires that there are no problems.
   *
   * @param problems excluding those of the document
   */
  public record Read(SystemVariants systems, List<Problem> problems) {}

  public static Read read(String id, Document document) {
    return new VariantsReader(id, document).read();
  }

  private Read read() {
    SystemReader.Read base = SystemReader.read(id, document);
    problems.addAll(base.problems());
    List<VariantText> texts = VariantTexts.read(document, problems);
    // a wrong line of the base would be reported again for each variant
    List<Variant> variants = problems.all().isEmpty()
        ? texts.stream().map(text -> variant(text, base)).toList() : List.of();
    var systems = new SystemVariants(base.system(), variants);
    if (problems.all().isEmpty()) {
      problems.addAll(SystemNotes.of(systems, document));
    }
    return new Read(systems, problems.inReadingOrder());
  }

  private Variant variant(VariantText text, SystemReader.Read base) {
    SystemReader.Read first = SystemReader.read(id, VariantDocument.of(document, text, Set.of()), text.key());
    SystemReader.Read read = SystemReader.read(id, VariantDocument.of(document, text, gone(text, first)), text.key());
    report(text, read.problems());
    if (read.system().equals(base.system())) {
      problems.add(Problem.at(VARIANT_CHANGES_NOTHING, document.source(), text.span()).with("name", text.name()));
    }
    return new Variant(text.name(), text.share(), text.about(), read.system());
  }

  /** The base's faults of which a part is taken away, or every part that ends at a point of theirs. */
  private Set<String> gone(VariantText text, SystemReader.Read read) {
    Set<String> gone = new HashSet<>();
    read.problems().stream()
        .filter(problem -> problem.code().equals(FaultyParts.FAULT_WITHOUT_PART) && !text.has(problem.span()))
        .forEach(problem -> lineAt(problem.span()).ifPresent(line -> gone.add(Names.key(line.key()))));
    Set<Terminal> ends = read.system().parts().stream().flatMap(part -> part.branches().stream())
        .flatMap(branch -> Stream.of(branch.a(), branch.b())).collect(Collectors.toSet());
    Set<String> own = text.lines("faults").stream().map(line -> Names.key(line.key())).collect(Collectors.toSet());
    read.system().faults().stream().filter(fault -> !own.contains(fault.key()))
        .filter(fault -> fault.effects().stream().anyMatch(effect -> effect instanceof Effect.Join join
            && !(ends.contains(join.a()) && ends.contains(join.b()))))
        .forEach(fault -> gone.add(fault.key()));
    return gone;
  }

  /** A problem in a line of the variant is its own; one in a line of the base comes from the change. */
  private void report(VariantText text, List<Problem> found) {
    List<String> broken = new ArrayList<>();
    for (Problem problem : found) {
      if (text.has(problem.span())) {
        problems.add(problem);
      } else if (!problem.code().equals(SystemChecks.CONTROL_WITHOUT_CONTACT)) {
        // a tree may still name a switch that is not there
        broken.add(lineAt(problem.span()).map(Entry::key).orElse("front matter") + "` (" + problem.code() + ")");
      }
    }
    if (!broken.isEmpty()) {
      problems.add(Problem.at(VARIANT_BREAKS_LINE, document.source(), text.span()).with("name", text.name())
          .with("lines", "`" + broken.stream().distinct().collect(Collectors.joining(", `"))));
    }
  }

  private Optional<Entry> lineAt(Span span) {
    return document.blocks().flatMap(block -> block.entries().stream())
        .filter(entry -> entry.keySpan().start() <= span.start() && span.end() <= entry.valueSpan().end()).findFirst();
  }
}
