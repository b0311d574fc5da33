package rungbook.rules.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungbook.markdown.Document;
import rungbook.markdown.Section;
import rungbook.markdown.Slug;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Span;

/** The changes that write another word. */
final class WordFixes {

  /** In characters; a heading is read anew for each of its words. */
  private static final int LONGEST_HEADING = 200;

  private final Document document;
  private final WordToAvoid.Linked linked;
  private final NavigableMap<Integer, Section> byTitle = new TreeMap<>();
  private final Map<String, List<Document.Anchor>> links;
  private final Set<String> slugs;

  WordFixes(Document document, WordToAvoid.Linked linked) {
    this.document = document;
    this.linked = linked;
    document.sections().forEach(section -> byTitle.put(section.titleSpan().start(), section));
    links = document.anchors().stream().collect(Collectors.groupingBy(Document.Anchor::target));
    slugs = document.sections().stream().map(Section::slug).collect(Collectors.toSet());
  }

  /** The change of a word in the Markdown; empty where it would break a link. */
  Optional<Fix> of(WordList.Found found) {
    return Optional.ofNullable(byTitle.floorEntry(found.span().start())).map(Map.Entry::getValue)
        .filter(section -> found.span().end() <= section.titleSpan().end())
        .map(section -> ofHeading(found, section)).orElseGet(() -> ofText(found));
  }

  /** The change of a word that nothing leads to. */
  Optional<Fix> ofText(WordList.Found found) {
    return edit(found).map(edit -> fix(List.of(edit)));
  }

  /** Changes the heading and the links to it together. */
  private Optional<Fix> ofHeading(WordList.Found found, Section section) {
    Span title = section.titleSpan();
    String written = document.source().text(title);
    if (!written.equals(section.title()) || written.length() > LONGEST_HEADING || isLinkedElsewhere(section)) {
      return Optional.empty();
    }
    return edit(found).flatMap(edit -> {
      String slug = Slug.of(written.substring(0, edit.span().start() - title.start()) + edit.replacement()
          + written.substring(edit.span().end() - title.start()));
      return slug.equals(section.slug()) ? Optional.of(fix(List.of(edit)))
          : slugs.contains(slug) ? Optional.empty() : Optional.of(fix(withLinks(edit, section.slug(), slug)));
    });
  }

  private List<Edit> withLinks(Edit heading, String before, String after) {
    var edits = new ArrayList<>(List.of(heading));
    links.getOrDefault("#" + before, List.of())
        .forEach(link -> edits.add(new Edit(document.source(), link.span(), "#" + after)));
    return edits;
  }

  private boolean isLinkedElsewhere(Section section) {
    String path = document.source().name();
    return linked.fromElsewhere(path.substring(path.lastIndexOf('/') + 1) + "#" + section.slug());
  }

  private Optional<Edit> edit(WordList.Found found) {
    AvoidedWord word = found.word();
    return word.uses().size() > 1 ? Optional.empty()
        : Optional.of(new Edit(document.source(), found.span(),
            Capitals.keep(document.source().text(found.span()), word.words(), word.uses().get(0))));
  }

  private static Fix fix(List<Edit> edits) {
    return new Fix("write `" + edits.get(0).replacement() + "`", edits);
  }
}
