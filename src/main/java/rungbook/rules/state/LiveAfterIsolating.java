package rungbook.rules.state;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Quantity;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** A check expects a live reading although, on some path, its power is isolated. Measuring zero is fine. */
public final class LiveAfterIsolating extends StateRule {

  static final Code LIVE_AFTER_ISOLATING = Code.of("live-after-isolating");

  private static final Set<Quantity> CURRENTS = Set.of(Quantity.AC_AMPS, Quantity.DC_MICROAMPS);

  @Override
  public List<Code> codes() {
    return List.of(LIVE_AFTER_ISOLATING);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().any(Fact.ISOLATED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.MeterCheck check && expectsPower(check);
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    inspect((Step.MeterCheck) step, context, point, out);
  }

  private static void inspect(Step.MeterCheck check, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    FactTable facts = context.state().facts();
    int isolated = point.nextMay(Fact.ISOLATED, 0);
    while (isolated != FactTable.NONE && !feeds(context.tree(), facts.words(isolated), check)) {
      isolated = point.nextMay(Fact.ISOLATED, isolated + 1);
    }
    if (isolated == FactTable.NONE) {
      LineVoltageLeads.deadAt(check, context).ifPresent(out::add);
    } else {
      Problem problem = Problem.at(LIVE_AFTER_ISOLATING, check.source(), check.expectedSpan())
          .with("source", facts.words(isolated))
          .with("quantity", check.quantity().words());
      out.add(problem.shownBy(point.showHolding(isolated, "")));
    }
  }

  /** Whether the check expects volts or a current other than zero. */
  private static boolean expectsPower(Step.MeterCheck check) {
    boolean power = check.quantity().isVolts() || CURRENTS.contains(check.quantity());
    return power && check.expected().isPresent() && !check.expected().get().contains(BigDecimal.ZERO);
  }

  private static boolean feeds(Tree tree, String source, Step.MeterCheck check) {
    String place = FactTable.place(check);
    boolean fed = (tree.system().isEmpty() && isolatedAt(tree, source).contains(place))
        || (check.leads().isEmpty() && Sources.isAt(tree.system(), source, place));
    for (NameRef lead : check.leads()) {
      if (Sources.mayBeAheadOf(source, lead.key())) {
        return false;
      }
      fed |= tree.system().isPresent() && Sources.feeds(tree.system().get(), source, lead.key(), place);
    }
    return fed;
  }

  /** The places where the tree isolates a source. */
  private static Set<String> isolatedAt(Tree tree, String source) {
    Set<String> places = new HashSet<>();
    for (Step step : tree.steps()) {
      for (Action action : step.actions()) {
        if (action.kind().begins(EquipmentCondition.ISOLATED) && action.key().equals(source)) {
          places.add(FactTable.place(step));
        }
      }
    }
    return places;
  }
}
