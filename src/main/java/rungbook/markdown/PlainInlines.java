package rungbook.markdown;

import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.parser.InlineParser;
import com.vladsch.flexmark.parser.InlineParserExtensionFactory;
import com.vladsch.flexmark.parser.InlineParserFactory;
import com.vladsch.flexmark.parser.delimiter.DelimiterProcessor;
import com.vladsch.flexmark.parser.internal.CommonmarkInlineParser;
import com.vladsch.flexmark.parser.internal.LinkRefProcessorData;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * The CommonMark inline parser with a shortcut: a line with no special characters becomes plain text at once. Most
 * headings, answers and sentences of a tree are such lines.
 */
final class PlainInlines extends CommonmarkInlineParser {

  private PlainInlines(
      DataHolder options, BitSet specialCharacters, BitSet delimiterCharacters,
      Map<Character, DelimiterProcessor> delimiterProcessors,
      LinkRefProcessorData linkRefProcessors, List<InlineParserExtensionFactory> extensions) {
    super(options, specialCharacters, delimiterCharacters, delimiterProcessors, linkRefProcessors, extensions);
  }

  static InlineParserFactory factory() {
    return new InlineParserFactory() {
      @Override
      public InlineParser inlineParser(
          DataHolder options, BitSet specialCharacters, BitSet delimiterCharacters,
          Map<Character, DelimiterProcessor> delimiterProcessors,
          LinkRefProcessorData linkRefProcessors, List<InlineParserExtensionFactory> extensions) {
        return new PlainInlines(options, specialCharacters, delimiterCharacters, delimiterProcessors, linkRefProcessors,
            extensions);
      }
    };
  }

  @Override
  public void parse(BasedSequence content, Node block) {
    BasedSequence trimmed = content.trim();
    if (isPlain(trimmed)) {
      block.appendChild(new Text(trimmed));
    } else {
      super.parse(content, block);
    }
  }

  private boolean isPlain(BasedSequence line) {
    for (int i = 0; i < line.length(); i++) {
      if (specialCharacters.get(line.charAt(i))) {
        return false;
      }
    }
    return line.length() > 0;
  }
}
