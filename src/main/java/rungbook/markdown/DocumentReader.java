package rungbook.markdown;

import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rungbook.markdown.preflight.Preflight;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.TextLimits;

/** Reads a file's Markdown into a {@link Document}. */
public final class DocumentReader {

  public static final Code TEXT_TOO_COSTLY = Code.of("text-too-costly");
  static final Code UNKNOWN_BLOCK = Code.of("unknown-block");

  private final Source source;
  private final FrontMatter front;
  private final TextLimits limits;
  private final Problems unread = new Problems();
  private final Problems remarks = new Problems();
  private final List<Section> sections = new ArrayList<>();
  private final List<Block> loose = new ArrayList<>();
  private final List<Span> misspelled = new ArrayList<>();

  private @Nullable Heading heading;
  private List<Block> blocks = loose;
  private List<BulletList> lists = new ArrayList<>();

  private DocumentReader(Source source, FrontMatter front, TextLimits limits) {
    this.source = source;
    this.front = front;
    this.limits = limits;
  }

  public static Document read(Source source) {
    return read(source, TextLimits.inForce());
  }

  /** Reads under the given limits. */
  public static Document read(Source source, TextLimits limits) {
    Optional<Problem> refused = Preflight.inspect(source, limits);
    if (refused.isPresent()) {
      return Document.refused(source, refused.get(), limits);
    }
    try {
      return new DocumentReader(source, FrontMatter.cut(source), limits).read();
    } catch (StackOverflowError deep) { // the library's patterns for comments and titles recurse on each character
      return Document.refused(source, Problem.at(TEXT_TOO_COSTLY, source, Span.at(0))
          .with("why", "it nests too deep, or has a comment or a link title that is too long"), limits);
    }
  }

  private Document read() {
    Lines.Read lines = Lines.read(source, front.inner());
    remarks.addAll(HiddenCharacters.in(source));
    unread.addAll(front.problems());
    unread.addAll(lines.problems());
    Node root = Flexmark.parse(source.text().substring(front.end()));
    for (Node node = root.getFirstChild(); node != null; node = node.getNext()) {
      take(node);
    }
    endSection(source.text().length());
    var inlines = Inlines.of(root, source, front.end());
    remarks.addAll(inlines.problems());
    return new Document(source, lines.entries(), front.inner(), sections, loose, inlines.pictures(),
        inlines.runs(), inlines.anchors(), misspelled, unread.all(), remarks.all(), limits);
  }

  private void take(Node node) {
    if (node instanceof Heading next && next.getLevel() == 2) {
      endSection(front.end() + next.getStartOffset());
      heading = next;
    } else if (node instanceof FencedCodeBlock fence) {
      takeFence(fence);
    } else if (node instanceof BulletList list && heading != null) {
      lists.add(list);
    }
  }

  private void takeFence(FencedCodeBlock fence) {
    String kind = source.text(span(fence.getInfo())).strip();
    if (Kinds.isKnown(kind)) {
      blocks.add(block(kind, fence));
    } else if (!kind.isEmpty()) {
      refuse(span(fence.getInfo()), kind, Nearest.to(kind, Kinds.OF_STEPS));
    }
  }

  /** A fence whose word is not close to any kind is ordinary text, for example code. */
  private void refuse(Span span, String kind, Optional<String> near) {
    if (near.isPresent()) {
      misspelled.add(span);
      unread
          .add(Problem.at(UNKNOWN_BLOCK, source, span).with("block", kind.toLowerCase(Locale.ROOT)).near(kind, near));
    }
  }

  private Block block(String kind, FencedCodeBlock fence) {
    Span info = span(fence.getInfo());
    Span whole = new Span(front.end() + fence.getStartOffset(), front.end() + fence.getEndOffset());
    Lines.Read lines = Lines.read(source, content(fence, info, whole));
    unread.addAll(lines.problems());
    return new Block(kind, info, whole, lines.entries());
  }

  /** The lines between the fences; a block that is never closed runs to the end of the text. */
  private Span content(FencedCodeBlock fence, Span info, Span whole) {
    int lineEnd = source.text().indexOf('\n', info.end());
    int start = lineEnd < 0 ? whole.end() : Math.min(lineEnd + 1, whole.end());
    BasedSequence closing = fence.getClosingMarker();
    return new Span(start, Math.max(start, closing.isEmpty() ? whole.end() : front.end() + closing.getStartOffset()));
  }

  private void endSection(int end) {
    if (heading != null) {
      String title = Inlines.words(heading, source, front.end()).strip();
      boolean isStep = blocks.stream().anyMatch(block -> Kinds.OF_STEPS.contains(block.kind()));
      Ways.Read ways = isStep ? Ways.read(lists, source, front.end(), unread) : Ways.Read.NONE;
      sections.add(new Section(title, Slug.of(title), span(heading.getText()),
          new Span(front.end() + heading.getStartOffset(), end), blocks, ways.ways(), ways.unread()));
    }
    blocks = new ArrayList<>();
    lists = new ArrayList<>();
  }

  private Span span(BasedSequence chars) {
    return new Span(front.end() + chars.getStartOffset(), front.end() + chars.getEndOffset());
  }
}
