package rungbook.rules.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.markdown.ParsedWay;
import rungbook.markdown.Section;
import rungbook.source.Code;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Span;
import rungbook.system.Vocabulary;

/**
 * Words that the library's own list avoids, in what people read of a text: its title, complaint and hazard, headings,
 * prose, answers and labels of links. Not in names, which belong to a system or a file: blocks, addresses, code, and
 * the answers that are a fragment's exits.
 */
public final class WordToAvoid {

  static final Code WORD_TO_AVOID = Code.of("word-to-avoid");

  private static final List<String> READ_IN_FRONT = List.of("title", "complaint", "hazard", "avoid");

  private final WordList list;
  private final Document document;
  private final PhraseTable<String> names = new PhraseTable<>();
  private final WordFixes fixes;
  private final Set<Integer> answersOfTakes;
  private final List<Problem> problems = new ArrayList<>();

  private WordToAvoid(WordList list, Document document, Optional<Vocabulary> system, WordFixes fixes) {
    this.list = list;
    this.document = document;
    this.fixes = fixes;
    this.answersOfTakes = answersOfTakes(document);
    system.ifPresent(this::takeNames);
  }

  /**
   * The words to avoid in a text, in reading order.
   *
   * @param system whose names are left alone
   * @param linked the headings that other texts link to, as {@code file.md#heading}
   */
  public static List<Problem> inspect(Document document, Optional<Vocabulary> system, WordList list,
      Linked linked) {
    if (list.isEmpty()) {
      return List.of();
    }
    var rule = new WordToAvoid(list, document, system, new WordFixes(document, linked));
    READ_IN_FRONT.forEach(key -> document.front(key).ifPresent(rule::inspectFront));
    document.runs().forEach(rule::inspectRun);
    return rule.problems;
  }

  /** Tells whether another text links to a heading, given as {@code file.md#heading}. */
  public interface Linked {
    boolean fromElsewhere(String heading);
  }

  private void inspectFront(Entry entry) {
    // in quotes a change could end the value
    boolean isPlain = entry.valueSpan().length() == entry.value().length();
    in(entry.valueSpan()).forEach(found -> add(found, () -> isPlain ? fixes.ofText(found) : Optional.empty()));
  }

  private void inspectRun(Span run) {
    if (!answersOfTakes.contains(run.start())) {
      in(run).forEach(found -> add(found, () -> fixes.of(found)));
    }
  }

  private List<WordList.Found> in(Span span) {
    return list.in(document.source().text(), span, names);
  }

  /** Past the number of problems that are listed, no fix is computed. */
  private void add(WordList.Found found, Supplier<Optional<Fix>> fix) {
    AvoidedWord word = found.word();
    String uses = word.uses().stream().map(use -> "`" + use + "`").collect(Collectors.joining(" or "));
    problems.add(Problem.at(WORD_TO_AVOID, document.source(), found.span()).with("word", word.words())
        .with("instead", word.reason().isEmpty() ? uses : uses + " (" + word.reason() + ")")
        .fixedBy(problems.size() < document.limits().problems() ? fix.get() : Optional.empty()));
  }

  /** Where the answers start that are names of a fragment's exits. */
  private static Set<Integer> answersOfTakes(Document document) {
    return document.sections().stream().filter(section -> section.blocks().stream()
        .anyMatch(block -> block.kind().equals("take"))).map(Section::ways).flatMap(List::stream)
        .map(ParsedWay::answerSpan).map(Span::start).collect(Collectors.toSet());
  }

  private void takeNames(Vocabulary system) {
    Stream.of(system.things().stream(), system.sightNames().stream(), system.faults().values().stream(),
        system.locations().values().stream().map(Vocabulary.Location::name), system.panels().stream(),
        system.controls().values().stream().flatMap(control -> control.positions().stream()))
        .flatMap(all -> all).forEach(name -> names.add(name, name));
  }
}
