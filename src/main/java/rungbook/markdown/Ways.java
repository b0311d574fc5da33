package rungbook.markdown;

import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;

/** The bullet list of a step whose items read {@code answer: [label](target)}. */
final class Ways {

  static final Code LINK_WITH_SPACE = Code.of("link-with-space");
  static final Code WAY_UNREADABLE = Code.of("way-unreadable");
  static final Code WAYS_TWICE = Code.of("ways-twice");

  private final Source source;
  private final int shift;
  private final Problems problems;
  private final List<Span> unread = new ArrayList<>();

  private Ways(Source source, int shift, Problems problems) {
    this.source = source;
    this.shift = shift;
    this.problems = problems;
  }

  /** @param unread items that look like ways on but cannot be read */
  record Read(List<ParsedWay> ways, List<Span> unread) {
    static final Read NONE = new Read(List.of(), List.of());
  }

  /** @param shift where the parsed text starts in the source */
  static Read read(List<BulletList> lists, Source source, int shift, Problems problems) {
    if (lists.isEmpty()) {
      return Read.NONE;
    }
    Ways reader = new Ways(source, shift, problems);
    return new Read(reader.read(lists), reader.unread);
  }

  private List<ParsedWay> read(List<BulletList> lists) {
    List<ParsedWay> found = List.of();
    for (BulletList list : lists) {
      List<ParsedWay> ways = readList(list);
      if (!ways.isEmpty() && !found.isEmpty()) {
        unread.add(firstLine(list));
        problems.add(Problem.at(WAYS_TWICE, source, firstLine(list)));
      } else if (!ways.isEmpty()) {
        found = ways;
      }
    }
    return found;
  }

  private List<ParsedWay> readList(BulletList list) {
    var ways = new ArrayList<ParsedWay>();
    var others = new ArrayList<Node>();
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      Node other = item;
      read(item).ifPresentOrElse(ways::add, () -> others.add(other));
    }
    others.stream().filter(item -> !ways.isEmpty() || isSpacedLink(item)).forEach(this::refuse);
    return ways;
  }

  private Optional<ParsedWay> read(Node item) {
    if (item.getFirstChild() instanceof Paragraph line && line.getNext() == null
        && line.getLastChild() instanceof Link link) {
      int start = shift + line.getStartOffset();
      int colon = lastBefore(shift + link.getStartOffset(), start);
      if (colon >= start && source.text().charAt(colon) == ':') {
        return Optional.of(way(link, start, source.text().substring(start, colon).stripTrailing()));
      }
    }
    return Optional.empty();
  }

  private ParsedWay way(Link link, int start, String answer) {
    return new ParsedWay(answer, new Span(start, start + answer.length()), Inlines.words(link, source, shift),
        Inlines.unescaped(link.getUrl(), source, shift),
        new Span(shift + link.getUrl().getStartOffset(), shift + link.getUrl().getEndOffset()),
        new Span(start, shift + link.getEndOffset()));
  }

  /** The offset of the last non-space character before an offset. */
  private int lastBefore(int offset, int start) {
    int at = offset - 1;
    while (at >= start && Character.isWhitespace(source.text().charAt(at))) {
      at--;
    }
    return at;
  }

  private void refuse(Node item) {
    unread.add(firstLine(item));
    problems.add(Problem.at(isSpacedLink(item) ? LINK_WITH_SPACE : WAY_UNREADABLE, source, firstLine(item)));
  }

  private boolean isSpacedLink(Node item) {
    return SpacedLink.isIn(source.text(firstLine(item)));
  }

  private Span firstLine(Node node) {
    Span line = source.lineSpan(source.placeAt(shift + node.getStartOffset()).line());
    return new Span(shift + node.getStartOffset(), line.end());
  }
}
