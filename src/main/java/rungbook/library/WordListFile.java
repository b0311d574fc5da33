package rungbook.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.rules.wording.WordList;
import rungbook.rules.wording.WordListReader;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.tree.reader.StepKeys;

/** A library's own list of words to avoid. */
final class WordListFile {

  static final String PATH = "shared/words.md";
  private static final WordList NO_WORDS = new WordList(List.of());

  private WordListFile() {}

  /** @param problems what is wrong with the list itself */
  record Read(WordList list, List<Problem> problems) {}

  static Read read(LibraryText text) {
    return Optional.ofNullable(text.texts().get(PATH)).map(WordListFile::read)
        .orElseGet(() -> new Read(NO_WORDS, List.of()));
  }

  private static Read read(Source source) {
    return Guarded.read(source, () -> read(DocumentReader.read(source)),
        problem -> new Read(NO_WORDS, List.of(problem)));
  }

  private static Read read(Document document) {
    var problems = new ArrayList<>(document.problems());
    if (document.unread().isEmpty() && document.front("title").isEmpty()) {
      problems.add(StepKeys.missing("title", "the front matter", document.source(), document.frontSpan()));
    }
    WordListReader.Read read = WordListReader.read(document);
    problems.addAll(read.problems());
    return new Read(read.list(), problems);
  }
}
