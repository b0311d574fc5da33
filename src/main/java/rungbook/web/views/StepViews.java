package rungbook.web.views;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.markdown.Prose;
import rungbook.text.English;
import rungbook.text.UrlPath;
import rungbook.tree.Caution;
import rungbook.tree.NameRef;
import rungbook.tree.Qualification;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;
import rungbook.web.views.StepView.CautionView;
import rungbook.web.views.StepView.Fact;
import rungbook.web.views.StepView.Lead;
import rungbook.web.views.StepView.WhoView;
import rungbook.web.views.StepView.WayView;

/** Turns a tree's steps into what a page shows of them. */
public final class StepViews {
  private static final List<String> LEAD_COLORS = List.of("red", "black");
  // a step that takes a fragment has a generated way to the fragment's first step
  private static final String INTO_FRAGMENT = "first";
  private final Tree tree;
  private final Map<String, Caution> cautions;
  private final IdentityHashMap<Document, Prose> prose = new IdentityHashMap<>();

  public StepViews(Tree tree, Map<String, Caution> cautions) {
    this.tree = tree;
    this.cautions = cautions;
  }

  public StepView of(Step step) {
    var header = step.header();
    return new StepView(step.id(), step.title(), kind(step), kind(step).substring(0, 1),
        step.source().placeAt(header.titleSpan().start()).line(),
        facts(step), header.who().stream().map(StepViews::who).toList(),
        header.cautions().stream().map(this::caution).toList(), leads(step),
        prose(step.header().document()).of(header.section()),
        step.ways().stream().map(this::way).toList(), isTakenIn(step) ? step.source().name() : "");
  }

  /** A document's prose, its links leading where pages are. */
  public Prose prose(Document document) {
    return prose.computeIfAbsent(document, own -> Prose.of(own, new PageLinks(own.source().name())));
  }

  @SuppressWarnings("ReferenceEquality") // a document's value is all its text
  private boolean isTakenIn(Step step) {
    return step.header().document() != tree.document();
  }

  private static String kind(Step step) {
    if (step instanceof Step.Check) {
      return "Check";
    }
    return step instanceof Step.Finding ? "Finding" : step instanceof Step.End ? "End" : "Task";
  }

  private static List<Fact> facts(Step step) {
    var facts = new ArrayList<Fact>();
    if (step instanceof Step.MeterCheck check) {
      facts.add(new Fact("Measure", check.measured()));
      written(step, "expect").ifPresent(window -> facts.add(new Fact("Expect", window)));
    }
    if (step instanceof Step.SenseCheck check) {
      facts.add(new Fact(English.capital(check.sense().word()), names(check.things())));
    }
    if (step instanceof Step.Finding finding) {
      conclude(finding, facts);
    }
    if (step instanceof Step.End end) {
      facts.add(new Fact("Result", end.result().words()));
      end.refer().ifPresent(whom -> facts.add(new Fact("Refer to", whom.text())));
    }
    step.actions()
        .forEach(action -> facts.add(new Fact(English.capital(action.kind().words()), action.thing().text())));
    written(step, "guarded").ifPresent(panels -> facts.add(new Fact("Left open, with a guard", panels)));
    written(step, "fragment").ifPresent(fragment -> facts.add(new Fact("Take in", fragment)));
    written(step, "with").ifPresent(state -> facts.add(new Fact("With", state)));
    step.at().ifPresent(place -> facts.add(new Fact("At", place.text())));
    written(step, "minutes").ifPresent(minutes -> facts.add(new Fact("Minutes", minutes)));
    step.timer().ifPresent(timer -> facts.add(new Fact(English.capital(timer.kind().key()), timer.written())));
    return facts;
  }

  private static void conclude(Step.Finding finding, List<Fact> facts) {
    if (!finding.faults().isEmpty()) {
      facts.add(new Fact(finding.faults().size() == 1 ? "Fault" : "One of", names(finding.faults())));
    }
    if (finding.healthy()) {
      facts.add(new Fact("Healthy", "no fault here"));
    }
    if (finding.evacuate()) {
      facts.add(new Fact("Evacuate", "everybody leaves the building"));
    }
    finding.refer().ifPresent(whom -> facts.add(new Fact("Stop and call", whom.text())));
  }

  private static Optional<String> written(Step step, String key) {
    return step.header().block().entry(key).map(Entry::value);
  }

  private static List<Lead> leads(Step step) {
    if (!(step instanceof Step.MeterCheck check)) {
      return List.of();
    }
    var leads = new ArrayList<Lead>();
    for (var i = 0; i < check.leads().size(); i++) {
      leads.add(new Lead(check.leads().size() == 1 ? "clamp" : LEAD_COLORS.get(Math.min(i, 1)),
          check.leads().get(i).text()));
    }
    return leads;
  }

  private CautionView caution(NameRef named) {
    return Optional.ofNullable(cautions.get(named.key()))
        .map(caution -> new CautionView(caution.title(), caution.level().word(), caution.hazard(),
            caution.avoid(), "/text/shared/cautions/" + UrlPath.of(caution.id()) + ".md"))
        .orElseGet(() -> new CautionView(named.text(), "caution", "", "", ""));
  }

  private static WhoView who(Qualification holder) {
    var path = holder.document().source().name();
    var known = path.startsWith("shared/qualifications/");
    return new WhoView(holder.title(), holder.rule(), known ? "/text/" + UrlPath.of(path) : "");
  }

  private WayView way(Way way) {
    var label = way.label().isEmpty() && way.target() instanceof Target.ToStep to ? tree.steps().get(to.step()).title()
        : way.label();
    return new WayView(way.written().isEmpty() ? INTO_FRAGMENT : way.written(), label, href(way.target()));
  }

  private Optional<String> href(Target target) {
    if (target instanceof Target.ToStep to) {
      return Optional.of("#" + tree.steps().get(to.step()).id());
    }
    return target instanceof Target.ToTree to
        ? Optional.of("/tree/trees/" + UrlPath.of(to.tree()) + ".md" + to.step().map(step -> "#" + step).orElse(""))
        : Optional.empty();
  }

  private static String names(List<NameRef> named) {
    return named.stream().map(NameRef::text).collect(Collectors.joining(", "));
  }
}
