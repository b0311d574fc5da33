package rungbook.markdown;

import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableBody;
import com.vladsch.flexmark.ext.tables.TableCell;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import rungbook.markdown.preflight.Preflight;
import rungbook.source.Source;
import rungbook.source.Span;

/** The rows of a text's tables, without the tables' heads. */
public final class Table {

  private Table() {}

  /**
   * A row.
   *
   * @param span the whole row
   */
  public record Row(List<Cell> cells, Span span) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A cell.
   *
   * @param text without markup
   * @param span the words as written; the row's where the cell is empty
   */
  public record Cell(String text, Span span) {}

  /** The rows of every table outside lists and quotes, in order. A rejected document has none. */
  public static List<Row> rows(Document document) {
    Source source = document.source();
    if (Preflight.inspect(source, document.limits()).isPresent()) {
      return List.of();
    }
    int shift = FrontMatter.cut(source).end();
    var rows = new ArrayList<Row>();
    children(Flexmark.parse(source.text().substring(shift))).filter(TableBlock.class::isInstance)
        .flatMap(Table::children).filter(TableBody.class::isInstance).flatMap(Table::children)
        .forEach(row -> rows.add(row(row, shift)));
    return rows;
  }

  private static Row row(Node row, int shift) {
    Span span = span(row, shift);
    return new Row(children(row).filter(TableCell.class::isInstance).map(TableCell.class::cast)
        .map(cell -> cell(cell, span, shift)).toList(), span);
  }

  private static Cell cell(TableCell cell, Span row, int shift) {
    String words = Inlines.words(cell);
    return new Cell(words, words.isEmpty() ? row
        : new Span(shift + cell.getText().getStartOffset(), shift + cell.getText().getEndOffset()));
  }

  private static Span span(Node node, int shift) {
    return new Span(shift + node.getStartOffset(), shift + node.getStartOffset() + node.getChars().trimEnd().length());
  }

  private static Stream<Node> children(Node node) {
    return StreamSupport.stream(node.getChildren().spliterator(), false);
  }
}
