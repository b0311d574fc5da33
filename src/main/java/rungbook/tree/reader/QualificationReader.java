package rungbook.tree.reader;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.NameRef;
import rungbook.tree.Qualification;
import rungbook.tree.Shared;
import rungbook.tree.WorkKind;

/** Reads a qualification's text, and the names of qualifications in a step. */
public final class QualificationReader {

  static final Code UNKNOWN_QUALIFICATION = Code.of("unknown-qualification");
  static final Code UNKNOWN_WORK = Code.of("unknown-work");

  private QualificationReader() {}

  /** @param id the file's name without {@code .md} */
  public static Qualification read(String id, Document document, Problems problems) {
    if (document.unread().isEmpty() && text(document, "rule").isEmpty()) {
      problems.add(StepKeys.missing("rule", "the front matter", document.source(), document.frontSpan()));
    }
    return new Qualification(id, text(document, "title").orElse(id), text(document, "rule").orElse(""),
        covers(document, problems), document);
  }

  private static Set<WorkKind> covers(Document document, Problems problems) {
    Set<WorkKind> covers = EnumSet.noneOf(WorkKind.class);
    List<Entry.Item> written = document.front("covers").map(Entry::items).orElse(List.of());
    written.stream().filter(item -> !item.text().isEmpty()).forEach(item -> WorkKind.named(item.text())
        .ifPresentOrElse(covers::add, () -> problems.add(unknownWork(item, document))));
    return covers;
  }

  private static Problem unknownWork(Entry.Item item, Document document) {
    List<String> known = WorkKind.allWords();
    return Problem.at(UNKNOWN_WORK, document.source(), item.span()).with("work", item.text())
        .with("known", String.join(", ", known)).near(item.text(), Nearest.to(item.text(), known));
  }

  private static Optional<String> text(Document document, String key) {
    return document.front(key).map(Entry::value).filter(value -> !value.isEmpty());
  }

  /** What a step's {@code who} names. */
  static List<Qualification> named(List<NameRef> names, Shared shared, Document document, Problems problems) {
    return names.stream().map(name -> Optional.ofNullable(shared.qualifications().get(name.key())).orElseGet(() -> {
      problems.add(Problem.at(UNKNOWN_QUALIFICATION, document.source(), name.span())
          .with("qualification", name.text())
          .near(name.text(), Nearest.to(name.text(), shared.qualifications().keySet())));
      return Qualification.unknown(name, document);
    })).toList();
  }
}
