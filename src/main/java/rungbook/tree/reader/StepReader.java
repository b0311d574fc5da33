package rungbook.tree.reader;

import java.math.BigDecimal;
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
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.Answer;
import rungbook.tree.NameRef;
import rungbook.tree.Numbers;
import rungbook.tree.Quantity;
import rungbook.tree.Setting;
import rungbook.tree.Shared;
import rungbook.tree.Step.Sense;
import rungbook.tree.Step;
import rungbook.tree.StepHeader;
import rungbook.tree.Way;

/** Reads one step from its block and ways on. */
final class StepReader {

  static final Code CHECK_READS_NOTHING = Code.of("check-reads-nothing");
  static final Code CHECK_READS_TWICE = Code.of("check-reads-twice");
  static final Code EXPECT_MISSING = Code.of("expect-missing");
  static final Code FINDING_CONTRADICTS = Code.of("finding-contradicts");
  static final Code FINDING_SAYS_NOTHING = Code.of("finding-says-nothing");
  static final Code FINDING_WITH_WAY = Code.of("finding-with-way");
  static final Code ITEM_EMPTY = Code.of("item-empty");
  static final Code LEADS_COUNT = Code.of("leads-count");
  static final Code LEADS_SAME = Code.of("leads-same");
  static final Code MINUTES_UNREADABLE = Code.of("minutes-unreadable");
  static final Code NOT_YES = Code.of("not-yes");
  static final Code TOO_MANY_ANSWERS = Code.of("too-many-answers");
  static final Code UNKNOWN_CAUTION = Code.of("unknown-caution");

  private static final BigDecimal USUAL_MINUTES = BigDecimal.ONE;

  private final UnresolvedStep unresolved;
  private final Block block;
  private final Source source;
  private final LinkResolver links;
  private final Shared shared;
  private final Optional<Vocabulary> system;
  private final Problems problems;
  private final SystemNames names;
  private final AnswerReader answers;

  private StepReader(UnresolvedStep unresolved, LinkResolver links, Shared shared, Optional<Vocabulary> system,
      Problems problems) {
    this.unresolved = unresolved;
    this.block = unresolved.block();
    this.source = unresolved.scope().document().source();
    this.links = links;
    this.shared = shared;
    this.system = system;
    this.problems = problems;
    this.names = new SystemNames(system, source, problems);
    this.answers = new AnswerReader(source, problems);
  }

  static Step read(UnresolvedStep unresolved, LinkResolver links, Shared shared, Optional<Vocabulary> system,
      Problems problems) {
    return new StepReader(unresolved, links, shared, system, problems).read();
  }

  private Step read() {
    StepKeys.inspect(block.entries(), StepKeys.of(block.kind()), "a " + block.kind(), source, problems);
    return switch (block.kind()) {
      case "check" -> check();
      case "task" -> new Step.Task(header(wordWays(1)), actions());
      case "finding" -> finding();
      default -> take();
    };
  }

  private Step check() {
    List<Entry> reads = block.entries().stream().filter(entry -> entry.is("measure") || sense(entry).isPresent())
        .toList();
    if (reads.size() > 1 || (reads.isEmpty() && !isBroken())) {
      Span span = reads.isEmpty() ? block.kindSpan() : reads.get(1).keySpan();
      problems.add(Problem.at(reads.isEmpty() ? CHECK_READS_NOTHING : CHECK_READS_TWICE, source, span));
    }
    if (reads.isEmpty()) {
      return new Step.SenseCheck(header(wordWays(1)), Sense.LOOK, List.of(), presumed());
    }
    return reads.get(0).is("measure") ? meterCheck(reads.get(0)) : senseCheck(reads.get(0));
  }

  /** Whether a line of the block could not be read and has a problem: whatever seems to be missing may be in it. */
  private boolean isBroken() {
    return unresolved.scope().document().unread().stream().anyMatch(
        problem -> problem.span().start() >= block.span().start() && problem.span().end() <= block.span().end());
  }

  private Step senseCheck(Entry read) {
    List<NameRef> things = items(read);
    return new Step.SenseCheck(header(wordWays(things.size())), sense(read).orElseThrow(), things, presumed());
  }

  private Step meterCheck(Entry measure) {
    Optional<Quantity> named = Quantity.named(measure.value());
    if (named.isEmpty()) {
      problems.add(MeterReader.unknown(measure.value(), source, measure.valueSpan()));
      return new Step.SenseCheck(header(wordWays(1)), Sense.LOOK, List.of(), presumed());
    }
    Quantity quantity = named.get();
    Optional<Entry> expect = block.entry("expect");
    if (expect.isEmpty() && !isBroken()) {
      problems.add(Problem.at(EXPECT_MISSING, source, measure.keySpan()));
    }
    return new Step.MeterCheck(header(readingWays(quantity)), quantity, measure.valueSpan(),
        leads(quantity, measure),
        expect.flatMap(entry -> answers.range(entry.value(), entry.valueSpan(), quantity)),
        expect.map(Entry::valueSpan).orElse(measure.valueSpan()), presumed());
  }

  private List<NameRef> leads(Quantity quantity, Entry measure) {
    List<NameRef> leads = block.entry("leads").map(this::items).orElse(List.of());
    if (quantity.leads() != 0 && leads.size() != quantity.leads() && !isBroken()) {
      Span span = block.entry("leads").map(Entry::valueSpan).orElse(measure.keySpan());
      problems.add(Problem.at(LEADS_COUNT, source, span).with("quantity", quantity.words())
          .with("needed", quantity.leads()).with("found", leads.size()));
    }
    leads.forEach(names::point);
    if (leads.size() == 2 && leads.get(0).key().equals(leads.get(1).key())) {
      problems.add(Problem.at(LEADS_SAME, source, leads.get(1).span()).with("point", leads.get(1).text()));
    }
    return leads;
  }

  private List<Setting> presumed() {
    return block.entry("with").map(this::items).orElse(List.of()).stream()
        .flatMap(item -> names.setting(item.text(), item.span()).stream()).toList();
  }

  private Step finding() {
    if (!unresolved.section().ways().isEmpty()) {
      problems.add(Problem.at(FINDING_WITH_WAY, source, unresolved.section().ways().get(0).span()));
    }
    List<NameRef> faults = block.entry("fault").map(this::items).orElse(List.of());
    faults.forEach(names::fault);
    boolean healthy = isYes("healthy");
    Optional<NameRef> refer = block.entry("refer").map(entry -> new NameRef(entry.value(), entry.valueSpan()));
    if (faults.isEmpty() && !healthy && refer.isEmpty() && !isBroken()) {
      problems.add(Problem.at(FINDING_SAYS_NOTHING, source, block.kindSpan()));
    }
    if (healthy && (!faults.isEmpty() || refer.isPresent())) {
      problems.add(Problem.at(FINDING_CONTRADICTS, source, block.entry("healthy").orElseThrow().keySpan()));
    }
    return new Step.Finding(header(List.of()), faults, healthy, refer, isYes("evacuate"), actions());
  }

  private boolean isYes(String key) {
    Optional<Entry> entry = block.entry(key);
    entry.filter(line -> !line.value().isEmpty() && !line.value().equalsIgnoreCase("yes"))
        .ifPresent(line -> problems.add(
            Problem.at(NOT_YES, source, line.valueSpan()).with("key", key).with("written", line.value())));
    return entry.isPresent();
  }

  private Step take() {
    if (block.entry("fragment").isEmpty() && !isBroken()) {
      problems.add(StepKeys.missing("fragment", "a take", source, block.kindSpan()));
    }
    links.inspectExits(unresolved);
    Span title = unresolved.section().titleSpan();
    var on = new Way(new Answer.AnythingElse(), "", title, links.entry(unresolved), "", title);
    return new Step.Task(header(List.of(on)), List.of());
  }

  private List<Action> actions() {
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

  private List<Way> readingWays(Quantity quantity) {
    return ways(way -> answers.reading(way.answer(), way.answerSpan(), quantity));
  }

  private List<Way> wordWays(int things) {
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
            way.label(), way.span()))
        .toList();
  }

  private StepHeader header(List<Way> ways) {
    Optional<NameRef> at = block.entry("at").map(entry -> new NameRef(entry.value(), entry.valueSpan()));
    at.ifPresent(names::location);
    List<NameRef> cautions = block.entry("cautions").map(this::items).orElse(List.of());
    cautions.stream().filter(name -> !shared.cautions().containsKey(name.key())).forEach(name -> problems.add(
        Problem.at(UNKNOWN_CAUTION, source, name.span()).with("caution", name.text()).near(name.text(),
            Nearest.to(name.text(), shared.cautions().keySet()))));
    return new StepHeader(unresolved.id(), unresolved.scope().document(), unresolved.section(), block, at, minutes(),
        cautions, ways);
  }

  private BigDecimal minutes() {
    Optional<Entry> entry = block.entry("minutes");
    Optional<BigDecimal> minutes = entry.flatMap(line -> Numbers.read(line.value()))
        .filter(measured -> measured.unit().isEmpty() && measured.number().signum() >= 0).map(Numbers.Measured::number);
    if (entry.isPresent() && minutes.isEmpty()) {
      problems
          .add(Problem.at(MINUTES_UNREADABLE, source, entry.get().valueSpan()).with("written", entry.get().value()));
    }
    return minutes
        .orElse(block.kind().equals("finding") || block.kind().equals("take") ? BigDecimal.ZERO : USUAL_MINUTES);
  }

  private List<NameRef> items(Entry entry) {
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

  private static Optional<Sense> sense(Entry entry) {
    return Sense.named(entry.key());
  }
}
