package rungbook.markdown;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.parser.core.ReferencePreProcessorFactory;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.List;

/** The Markdown parser as this project sets it up: CommonMark and tables. */
public final class Flexmark {

  static final DataHolder OPTIONS = new MutableDataSet().set(Parser.EXTENSIONS, List.of(TablesExtension.create()))
      .toImmutable();

  // a custom inline parser disables flexmark's handling of link references: register it explicitly
  private static final Parser PARSER = Parser.builder(OPTIONS).customInlineParserFactory(PlainInlines.factory())
      .paragraphPreProcessorFactory(new ReferencePreProcessorFactory()).build();

  private Flexmark() {}

  static Document parse(String text) {
    return PARSER.parse(text);
  }
}
