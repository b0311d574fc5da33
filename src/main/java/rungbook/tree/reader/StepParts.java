package rungbook.tree.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungbook.action.ActionCompiler;
import rungbook.action.ActionKind;
import rungbook.action.ActionObject;
import rungbook.action.StateChange;
import rungbook.markdown.Block;
import rungbook.markdown.Entry;
import rungbook.markdown.ParsedWay;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.Answer;
import rungbook.tree.NameRef;
import rungbook.tree.Qualification;
import rungbook.tree.Shared;
import rungbook.tree.Step;
import rungbook.tree.StepHeader;
import rungbook.tree.StepTimer;
import rungbook.tree.Way;

/** Reads what steps of several kinds have: header, actions, ways on, lists of names. */
final class StepParts {

  static final Code ITEM_EMPTY = Code.of("item-empty");
  static final Code NOT_YES = Code.of("not-yes");
  static final Code TOO_MANY_ANSWERS = Code.of("too-many-answers");
  static final Code UNKNOWN_CAUTION = Code.of("unknown-caution");

  private final UnresolvedStep unresolved;
  private final Block block;
  private final Source source;
  private final LinkResolver links;
  private final Shared shared;
  private final Optional<Vocabulary> system;
  private final Problems problems;
  private final SystemNames names;
  private final AnswerReader answers;

  StepParts(UnresolvedStep unresolved, LinkResolver links, Shared shared, Optional<Vocabulary> system,
      Problems problems) {
    this.unresolved = unresolved;
    this.block = unresolved.block();
    this.source = unresolved.source();
    this.links = links;
    this.shared = shared;
    this.system = system;
    this.problems = problems;
    this.names = new SystemNames(system, source, problems);
    this.answers = new AnswerReader(source, problems);
  }

  /** Whether a line of the block could not be read and has a problem: whatever seems to be missing may be in it. */
  boolean isBroken() {
    return unresolved.scope().document().unread().stream().anyMatch(
        problem -> problem.span().start() >= block.span().start() && problem.span().end() <= block.span().end());
  }

  boolean isYes(String key) {
    Optional<Entry> entry = block.entry(key);
    entry.filter(line -> !line.value().isEmpty() && !line.value().equalsIgnoreCase("yes"))
        .ifPresent(line -> problems.add(
            Problem.at(NOT_YES, source, line.valueSpan()).with("key", key).with("written", line.value())));
    return entry.isPresent();
  }

  List<Way> noWays(Code code) {
    unresolved.section().ways().stream().findFirst()
        .ifPresent(way -> problems.add(Problem.at(code, source, way.span())));
    return List.of();
  }

  List<Action> actions() {
    var compiler = new ActionCompiler(system, block.entry("at").map(entry -> Names.key(entry.value())).orElse(""));
    var actions = new ArrayList<Action>();
    for (Entry entry : block.entries()) {
      ActionKind.named(entry.key()).ifPresent(kind -> {
        boolean whole = kind.object() == ActionObject.FREE_TEXT;
        List<NameRef> things = whole ? List.of(new NameRef(entry.value(), entry.valueSpan())) : items(entry);
        things.forEach(thing -> actions.add(action(kind, thing, compiler)));
      });
    }
    return actions;
  }

  private Action action(ActionKind kind, NameRef thing, ActionCompiler compiler) {
    String key = thing.key();
    names.thing(kind.object(), thing, key);
    boolean setting = kind.object() == ActionObject.SETTING;
    return new Action(kind, thing, key, setting ? position(thing) : compiler.compile(kind, key));
  }

  private List<StateChange> position(NameRef thing) {
    return names.setting(thing.text(), thing.span()).stream()
        .<StateChange>map(setting -> new StateChange.SetPosition(setting.control(), setting.position())).toList();
  }

  List<Way> readingWays(Quantity quantity) {
    return ways(way -> answers.reading(way.answer(), way.answerSpan(), quantity));
  }

  List<Way> wordWays(int things) {
    return ways(way -> answers.words(way.answer(), way.answerSpan(), things));
  }

  private List<Way> ways(Function<ParsedWay, Answer> read) {
    List<ParsedWay> written = unresolved.section().ways();
    if (written.size() > Step.MOST_ANSWERS) {
      problems.add(Problem.at(TOO_MANY_ANSWERS, source, written.get(Step.MOST_ANSWERS).span())
          .with("found", written.size()).with("most", Step.MOST_ANSWERS));
    }
    return written.stream().limit(Step.MOST_ANSWERS)
        .map(way -> new Way(read.apply(way), way.answer(), way.answerSpan(), links.target(unresolved.scope(), way),
            links.label(unresolved.scope(), way), way.span()))
        .toList();
  }

  StepHeader header(List<Way> ways) {
    Optional<NameRef> at = block.entry("at").map(entry -> new NameRef(entry.value(), entry.valueSpan()));
    at.ifPresent(names::location);
    List<NameRef> cautions = block.entry("cautions").map(this::items).orElse(List.of());
    cautions.stream().filter(name -> !shared.cautions().containsKey(name.key())).forEach(name -> problems.add(
        Problem.at(UNKNOWN_CAUTION, source, name.span()).with("caution", name.text()).near(name.text(),
            Nearest.to(name.text(), shared.cautions().keySet()))));
    var times = new StepTimes(block, source, problems);
    Optional<StepTimer> timer = times.timer();
    return new StepHeader(unresolved.id(), unresolved.scope().document(), unresolved.section(), block, at,
        times.minutes(timer), timer, cautions, who(), ways);
  }

  private List<Qualification> who() {
    List<NameRef> names = block.entry("who").map(this::items).orElse(List.of());
    return QualificationReader.named(names, shared, unresolved.scope().document(), problems);
  }

  List<NameRef> items(Entry entry) {
    return items(entry, source, problems);
  }

  /** The names in a comma-separated value; reports those that are empty. */
  static List<NameRef> items(Entry entry, Source source, Problems problems) {
    var items = new ArrayList<NameRef>();
    for (Entry.Item item : entry.items()) {
      if (!item.text().isEmpty()) {
        items.add(new NameRef(item.text(), item.span()));
      } else if (!entry.value().isEmpty()) {
        problems.add(Problem.at(ITEM_EMPTY, source, entry.valueSpan()).with("key", entry.key()));
      }
    }
    return items;
  }
}
