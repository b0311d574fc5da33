package rungbook.rules.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Table;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * Reads a list of words to avoid: tables with the columns words to avoid, word to use, and reason. The first two may
 * hold several, separated by commas.
 */
public final class WordListReader {

  static final Code REPLACEMENT_AVOIDED = Code.of("replacement-avoided");
  static final Code TOO_MANY_WORDS = Code.of("too-many-words");
  static final Code WORD_ROW_UNREADABLE = Code.of("word-row-unreadable");
  static final Code WORD_TWICE = Code.of("word-twice");

  private static final int MOST_WORDS = 1_000;

  private final Source source;
  private final Map<String, AvoidedWord> words = new LinkedHashMap<>();
  private final List<Use> uses = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private WordListReader(Source source) {
    this.source = source;
  }

  private record Use(AvoidedWord word, Span span) {}

  public record Read(WordList list, List<Problem> problems) {}

  public static Read read(Document document) {
    var reader = new WordListReader(document.source());
    for (Table.Row row : Table.rows(document)) {
      if (reader.words.size() > MOST_WORDS) {
        break;
      }
      reader.read(row);
    }
    reader.uses.forEach(reader::inspect);
    return new Read(new WordList(List.copyOf(reader.words.values())), reader.problems);
  }

  private void read(Table.Row row) {
    List<String> avoided = items(row, 0);
    List<String> instead = items(row, 1);
    if (avoided.isEmpty() || instead.isEmpty() || !Stream.concat(avoided.stream(), instead.stream())
        .allMatch(WordListReader::isPlain)) {
      problems.add(Problem.at(WORD_ROW_UNREADABLE, source, row.span()));
      return;
    }
    String reason = row.cells().size() < 3 ? "" : row.cells().get(2).text();
    avoided.forEach(word -> add(new AvoidedWord(word, instead, reason), row));
  }

  private void add(AvoidedWord word, Table.Row row) {
    Span span = row.cells().get(0).span();
    if (words.putIfAbsent(PhraseTable.key(word.words()), word) != null) {
      problems.add(Problem.at(WORD_TWICE, source, span).with("word", word.words()));
      return;
    }
    uses.add(new Use(word, row.cells().get(1).span()));
    if (words.size() == MOST_WORDS + 1) {
      problems.add(Problem.at(TOO_MANY_WORDS, source, span).with("most", MOST_WORDS));
    }
  }

  /** What is written instead of one word must not be another to avoid, else a fix would lead in a circle. */
  private void inspect(Use use) {
    use.word().uses().stream().filter(words -> this.words.containsKey(PhraseTable.key(words))).findFirst()
        .ifPresent(again -> problems.add(Problem.at(REPLACEMENT_AVOIDED, source, use.span())
            .with("word", use.word().words()).with("use", again)));
  }

  private static List<String> items(Table.Row row, int column) {
    return row.cells().size() <= column ? List.of()
        : Arrays.stream(row.cells().get(column).text().split(",")).map(String::strip).filter(word -> !word.isEmpty())
            .toList();
  }

  /** Words and blanks only: other signs might be markup where the word is to be written. */
  private static boolean isPlain(String phrase) {
    List<WordScanner.Word> found = WordScanner.in(phrase, new Span(0, phrase.length()));
    int letters = found.stream().mapToInt(word -> word.span().length()).sum();
    return found.size() <= PhraseTable.LONGEST
        && letters == phrase.chars().filter(c -> !Character.isWhitespace(c)).count();
  }
}
