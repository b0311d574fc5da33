package rungbook.web.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.library.mention.Mention;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Entry;
import rungbook.source.Source;
import rungbook.text.UrlPath;
import rungbook.web.views.PageLinks;

/**
 * A text that names a file, and where.
 *
 * @param places the lines that name it, each once
 */
public record UseView(String path, String title, String href, List<PlaceView> places) {

  /** @param line counted from 1 */
  public record PlaceView(int line, String words, String editHref) {}

  /** One a text, in the order of the mentions. */
  public static List<UseView> of(List<Mention> mentions) {
    return mentions.stream().collect(Collectors.groupingBy(Mention::source, LinkedHashMap::new, Collectors.toList()))
        .entrySet().stream().map(text -> of(text.getKey(), text.getValue())).toList();
  }

  private static UseView of(Source source, List<Mention> mentions) {
    var title = DocumentReader.read(source).front("title").map(Entry::value).orElse(source.name());
    return new UseView(source.name(), title, PageLinks.page(source.name()), mentions.stream()
        .map(mention -> source.placeAt(mention.span().start()).line()).distinct()
        .map(line -> new PlaceView(line, source.text(source.lineSpan(line)).strip(),
            "/edit/" + UrlPath.of(source.name()) + "?line=" + line))
        .toList());
  }
}
