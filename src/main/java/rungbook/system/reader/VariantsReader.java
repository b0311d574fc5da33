package rungbook.system.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;
import rungbook.system.pairs.FaultPairReader;
import rungbook.system.variant.VariantText;
import rungbook.system.variant.VariantTexts;

/** Reads a system and its variants, each variant by the same code as the base. */
public final class VariantsReader {

  static final Code VARIANT_BREAKS_LINE = Code.of("variant-breaks-line");
  static final Code VARIANT_CHANGES_NOTHING = Code.of("variant-changes-nothing");

  private final String id;
  private final Document document;
  private final Problems problems = new Problems();
  private final List<Form> forms = new ArrayList<>();

  /** A variant as its text states it, and what its lines were read as. */
  private record Form(VariantText text, SystemReader.Lines lines) {
    Variant variant() {
      return new Variant(text.name(), text.share(), text.about(), lines.system());
    }
  }

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
    VariantsReader reader = new VariantsReader(id, document);
    SystemVariants systems = reader.systems();
    reader.forms.forEach(form -> reader.inspect(form.text(), form.lines(), systems.base()));
    if (reader.problems.all().isEmpty()) {
      reader.problems.addAll(SystemNotes.of(systems, document));
    }
    return new Read(systems, reader.problems.inReadingOrder());
  }

  /** The same system, for those who do not report its problems. */
  public static SystemVariants systems(String id, Document document) {
    return new VariantsReader(id, document).systems();
  }

  private SystemVariants systems() {
    SystemReader.Lines lines = SystemReader.lines(id, document);
    SystemReader.Read base = lines.checked();
    problems.addAll(base.problems());
    List<VariantText> texts = VariantTexts.read(document, problems);
    if (problems.all().isEmpty()) { // a wrong line of the base would be reported again for each variant
      texts.forEach(text -> forms.add(new Form(text, SystemReader.lines(document, text, lines.lines()))));
    }
    return new SystemVariants(base.system(), forms.stream().map(Form::variant).toList());
  }

  private void inspect(VariantText text, SystemReader.Lines lines, ControlSystem base) {
    report(text, lines.checked().problems());
    if (lines.system().equals(base)) {
      problems.add(Problem.at(VARIANT_CHANGES_NOTHING, document.source(), text.span()).with("name", text.name()));
    }
  }

  /** A problem in a line of the variant is its own; one in a line of the base comes from the change. */
  private void report(VariantText text, List<Problem> found) {
    List<String> broken = new ArrayList<>();
    for (Problem problem : found) {
      if (text.has(problem.span())) {
        problems.add(problem);
      } else if (!mayBeGone(problem)) {
        broken.add(lineAt(problem.span()).map(Entry::key).orElse("front matter") + "` (" + problem.code() + ")");
      }
    }
    if (!broken.isEmpty()) {
      problems.add(Problem.at(VARIANT_BREAKS_LINE, document.source(), text.span()).with("name", text.name())
          .with("lines", "`" + broken.stream().distinct().collect(Collectors.joining(", `"))));
    }
  }

  /** A tree may still name a switch that is not there, and a fault may come with another where that one can be. */
  private static boolean mayBeGone(Problem problem) {
    return problem.code().equals(SystemChecks.CONTROL_WITHOUT_CONTACT)
        || problem.code().equals(FaultPairReader.PAIR_UNKNOWN);
  }

  private Optional<Entry> lineAt(Span span) {
    return document.blocks().flatMap(block -> block.entries().stream())
        .filter(entry -> entry.keySpan().start() <= span.start() && span.end() <= entry.valueSpan().end()).findFirst();
  }
}
