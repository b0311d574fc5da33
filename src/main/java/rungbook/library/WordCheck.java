package rungbook.library;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.rules.wording.WordList;
import rungbook.rules.wording.WordToAvoid;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.tree.Tree;

/** Checks a library's texts against its own list of words to avoid, {@code shared/words.md}. */
final class WordCheck {

  private static final String LINK = ".md#";
  /** In characters on either side of {@code .md#}; longer than any name of a file, or heading with a fix. */
  private static final int LONGEST_NAME = 250;

  private final LibraryText text;
  private final Supplier<WordList> list;
  private volatile Optional<Set<String>> links = Optional.empty();

  /** @param list is asked when the first text is checked */
  WordCheck(LibraryText text, Supplier<WordList> list) {
    this.text = text;
    this.list = list;
  }

  List<Problem> inspect(Tree tree) {
    return WordToAvoid.inspect(tree.document(), tree.system(), list.get(), this::isLinked);
  }

  /** The words to avoid in the shared texts that people read; the others are names and numbers. */
  List<Problem> inspect(List<Document> shared) {
    return shared.stream().filter(document -> isProse(document.source().name()))
        .flatMap(document -> WordToAvoid.inspect(document, Optional.empty(), list.get(), this::isLinked).stream())
        .toList();
  }

  private static boolean isProse(String path) {
    return Stream.of("shared/cautions/", "shared/fragments/", "shared/qualifications/").anyMatch(path::startsWith);
  }

  /** Whether any text links to a heading by its file's name. Reads all texts, once, when first asked. */
  private boolean isLinked(String heading) {
    Set<String> known = links.orElseGet(this::findLinks);
    links = Optional.of(known);
    return known.contains(heading);
  }

  private Set<String> findLinks() {
    var found = new HashSet<String>();
    for (Source source : text.texts().values()) {
      String words = source.text();
      for (int at = words.indexOf(LINK); at >= 0; at = words.indexOf(LINK, at + 1)) {
        found.add(words.substring(nameStart(words, at), addressEnd(words, at)));
      }
    }
    return found;
  }

  private static int nameStart(String words, int dot) {
    int start = dot;
    while (start > 0 && dot - start < LONGEST_NAME && "(/<\n".indexOf(words.charAt(start - 1)) < 0) {
      start--;
    }
    return start;
  }

  private static int addressEnd(String words, int dot) {
    int end = dot;
    while (end < words.length() && end - dot < LONGEST_NAME && ")>\" \n\r".indexOf(words.charAt(end)) < 0) {
      end++;
    }
    return end;
  }
}
