package rungbook.tree.reader;

import java.util.List;
import java.util.Optional;
import rungbook.action.ActionObject;
import rungbook.markdown.Block;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary;
import rungbook.system.quantity.QuantityReader;
import rungbook.text.English;
import rungbook.tree.Answer;
import rungbook.tree.NameRef;
import rungbook.tree.Setting;
import rungbook.tree.Shared;
import rungbook.tree.Step.Sense;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** Reads one step from its block and ways on. */
public final class StepReader {

  static final Code CHECK_READS_NOTHING = Code.of("check-reads-nothing");
  static final Code CHECK_READS_TWICE = Code.of("check-reads-twice");
  static final Code END_WITH_WAY = Code.of("end-with-way");
  static final Code EXPECT_MISSING = Code.of("expect-missing");
  static final Code FINDING_CONTRADICTS = Code.of("finding-contradicts");
  static final Code FINDING_SAYS_NOTHING = Code.of("finding-says-nothing");
  static final Code FINDING_WITH_WAY = Code.of("finding-with-way");
  public static final Code LEADS_COUNT = Code.of("leads-count");
  public static final Code LEADS_SAME = Code.of("leads-same");
  static final Code UNKNOWN_RESULT = Code.of("unknown-result");

  private final UnresolvedStep unresolved;
  private final Block block;
  private final Source source;
  private final LinkResolver links;
  private final Problems problems;
  private final Optional<Vocabulary> system;
  private final SystemNames names;
  private final AnswerReader answers;
  private final StepParts parts;

  private StepReader(UnresolvedStep unresolved, LinkResolver links, Shared shared, Optional<Vocabulary> system,
      Problems problems) {
    this.unresolved = unresolved;
    this.block = unresolved.block();
    this.source = unresolved.source();
    this.links = links;
    this.problems = problems;
    this.system = system;
    this.names = new SystemNames(system, source, problems);
    this.answers = new AnswerReader(source, problems);
    this.parts = new StepParts(unresolved, links, shared, system, problems);
  }

  static Step read(UnresolvedStep unresolved, LinkResolver links, Shared shared, Optional<Vocabulary> system,
      Problems problems) {
    return new StepReader(unresolved, links, shared, system, problems).read();
  }

  private Step read() {
    StepKeys.inspect(block.entries(), StepKeys.of(block.kind()), English.withArticle(block.kind()), source, problems);
    return switch (block.kind()) {
      case "check" -> check();
      case "task" -> new Step.Task(parts.header(parts.wordWays(1)), parts.actions());
      case "finding" -> finding();
      case "end" -> end();
      default -> take();
    };
  }

  private Step check() {
    parts.isYes(Step.Check.AGAIN);
    List<Entry> reads = block.entries().stream().filter(entry -> entry.is("measure") || sense(entry).isPresent())
        .toList();
    if (reads.size() > 1 || (reads.isEmpty() && !parts.isBroken())) {
      Span span = reads.isEmpty() ? block.kindSpan() : reads.get(1).keySpan();
      problems.add(Problem.at(reads.isEmpty() ? CHECK_READS_NOTHING : CHECK_READS_TWICE, source, span));
    }
    if (reads.isEmpty()) {
      return new Step.SenseCheck(parts.header(parts.wordWays(1)), Sense.LOOK, List.of(), presumed());
    }
    return reads.get(0).is("measure") ? meterCheck(reads.get(0)) : senseCheck(reads.get(0));
  }

  private Step senseCheck(Entry read) {
    List<NameRef> things = parts.items(read);
    return new Step.SenseCheck(parts.header(parts.wordWays(things.size())), sense(read).orElseThrow(), things,
        presumed());
  }

  private Step meterCheck(Entry measure) {
    Optional<Vocabulary.StatedQuantity> stated = names.quantity(measure.value());
    Optional<Quantity> named = Quantity.named(measure.value())
        .or(() -> stated.map(Vocabulary.StatedQuantity::kind));
    if (named.isEmpty()) {
      problems.add(
          QuantityReader.unknown(measure.value(), SystemNames.measurable(system), source, measure.valueSpan()));
      return new Step.SenseCheck(parts.header(parts.wordWays(1)), Sense.LOOK, List.of(), presumed());
    }
    Quantity quantity = named.get();
    Optional<Entry> expect = block.entry("expect");
    if (expect.isEmpty() && !parts.isBroken()) {
      problems.add(Problem.at(EXPECT_MISSING, source, measure.keySpan()));
    }
    return new Step.MeterCheck(parts.header(parts.readingWays(quantity)), quantity, measure.valueSpan(),
        stated.map(Vocabulary.StatedQuantity::name), leads(quantity, measure),
        expect.flatMap(entry -> answers.range(entry.value(), entry.valueSpan(), quantity)),
        expect.map(Entry::valueSpan).orElse(measure.valueSpan()), presumed());
  }

  private List<NameRef> leads(Quantity quantity, Entry measure) {
    List<NameRef> leads = block.entry("leads").map(parts::items).orElse(List.of());
    if (quantity.leads() != 0 && leads.size() != quantity.leads() && !parts.isBroken()) {
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
    return block.entry("with").map(parts::items).orElse(List.of()).stream()
        .flatMap(item -> names.setting(item.text(), item.span()).stream()).toList();
  }

  private Step finding() {
    List<NameRef> faults = block.entry("fault").map(parts::items).orElse(List.of());
    faults.forEach(names::fault);
    boolean healthy = parts.isYes("healthy");
    Optional<NameRef> refer = block.entry("refer").map(entry -> new NameRef(entry.value(), entry.valueSpan()));
    if (faults.isEmpty() && !healthy && refer.isEmpty() && !parts.isBroken()) {
      problems.add(Problem.at(FINDING_SAYS_NOTHING, source, block.kindSpan()));
    }
    if (healthy && (!faults.isEmpty() || refer.isPresent())) {
      problems.add(Problem.at(FINDING_CONTRADICTS, source, block.entry("healthy").orElseThrow().keySpan()));
    }
    boolean evacuate = parts.isYes("evacuate");
    List<Way> ways = healthy || evacuate ? parts.noWays(FINDING_WITH_WAY) : parts.wordWays(1);
    return new Step.Finding(parts.header(ways), faults, healthy, refer, evacuate, parts.actions(), guarded());
  }

  private Step end() {
    Optional<Entry> written = block.entry("result");
    if (written.isEmpty() && !parts.isBroken()) {
      problems.add(StepKeys.missing("result", "an end", source, block.kindSpan()));
    }
    Optional<Step.Result> result = written.flatMap(line -> Step.Result.named(line.value()));
    written.filter(line -> result.isEmpty() && !line.value().isEmpty()).ifPresent(this::unknownResult);
    Optional<NameRef> refer = block.entry("refer").map(entry -> new NameRef(entry.value(), entry.valueSpan()));
    if (result.equals(Optional.of(Step.Result.REFERRED)) && refer.isEmpty() && !parts.isBroken()) {
      problems.add(StepKeys.missing("refer", "an end with `result: referred`", source, block.kindSpan()));
    }
    // an unknown result promises nothing, so no rule asks for what would have to be done before it
    return new Step.End(parts.header(parts.noWays(END_WITH_WAY)), result.orElse(Step.Result.REFERRED), refer,
        guarded());
  }

  /** The panels that stay open, with a guard. */
  private List<NameRef> guarded() {
    List<NameRef> panels = block.entry("guarded").map(parts::items).orElse(List.of());
    panels.forEach(panel -> names.thing(ActionObject.PANEL, panel, panel.key()));
    return panels;
  }

  private void unknownResult(Entry line) {
    List<String> known = Step.Result.allWords();
    problems.add(Problem.at(UNKNOWN_RESULT, source, line.valueSpan()).with("written", line.value())
        .with("known", String.join(", ", known)).near(line.value(), Nearest.to(line.value(), known)));
  }

  private Step take() {
    if (block.entry("fragment").isEmpty() && !parts.isBroken()) {
      problems.add(StepKeys.missing("fragment", "a take", source, block.kindSpan()));
    }
    links.inspectExits(unresolved);
    Span title = unresolved.section().titleSpan();
    var on = new Way(new Answer.AnythingElse(), "", title, links.entry(unresolved), "", title);
    return new Step.Task(parts.header(List.of(on)), List.of());
  }

  private static Optional<Sense> sense(Entry entry) {
    return Sense.named(entry.key());
  }
}
