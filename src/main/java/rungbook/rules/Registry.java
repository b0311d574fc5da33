package rungbook.rules;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.cautions.CautionLacking;
import rungbook.rules.cautions.LineVoltageUnsaid;
import rungbook.rules.cautions.NothingLockedOut;
import rungbook.rules.paths.AgainOfNothing;
import rungbook.rules.paths.AskedBefore;
import rungbook.rules.readings.AnswerUnreachable;
import rungbook.rules.readings.HealthyAgainstReading;
import rungbook.rules.readings.LimitsTooClose;
import rungbook.rules.readings.NotShown;
import rungbook.rules.readings.OverloadLeft;
import rungbook.rules.readings.QuantityLacking;
import rungbook.rules.readings.ReadingGap;
import rungbook.rules.readings.ReadingOverlap;
import rungbook.rules.readings.SightAnswers;
import rungbook.rules.readings.WindowSplit;
import rungbook.rules.readings.WordAnswers;
import rungbook.rules.repair.ControlLeft;
import rungbook.rules.repair.EndNotTagged;
import rungbook.rules.repair.FindingAfterFinding;
import rungbook.rules.repair.FindingWithoutRepair;
import rungbook.rules.repair.GuardNotNeeded;
import rungbook.rules.repair.ProofInWords;
import rungbook.rules.repair.RepairElsewhere;
import rungbook.rules.repair.RepairedAndProved;
import rungbook.rules.safety.BreakerOntoGround;
import rungbook.rules.safety.BypassNotProved;
import rungbook.rules.safety.CableEndLive;
import rungbook.rules.safety.DeadWork;
import rungbook.rules.safety.FuseAgain;
import rungbook.rules.safety.FuseReadLive;
import rungbook.rules.safety.GasGoesOn;
import rungbook.rules.safety.IsolationNotTried;
import rungbook.rules.safety.LeftBehind;
import rungbook.rules.safety.MeterNotProved;
import rungbook.rules.safety.PanelOpenedLive;
import rungbook.rules.safety.ProveDeadPoints;
import rungbook.rules.safety.ProvedBeforeIsolating;
import rungbook.rules.safety.RestoredOntoLoad;
import rungbook.rules.safety.StillLiveUsed;
import rungbook.rules.safety.StopAnswers;
import rungbook.rules.safety.SwitchedUnderLoad;
import rungbook.rules.safety.TooManyNames;
import rungbook.rules.safety.TryWithoutWay;
import rungbook.rules.safety.WhoUnsaid;
import rungbook.rules.state.LiveAfterIsolating;
import rungbook.rules.state.MeasuredLive;
import rungbook.rules.state.PanelClosed;
import rungbook.rules.state.PlaceMissing;
import rungbook.rules.state.PointElsewhere;
import rungbook.rules.state.PresumedSetting;
import rungbook.rules.state.RestoreOfNothing;
import rungbook.rules.state.RestoredDisconnected;
import rungbook.rules.structure.NoWayOn;
import rungbook.rules.structure.OneAnswer;
import rungbook.rules.structure.PathCircle;
import rungbook.rules.structure.Unreached;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Tree;

/** All rules, in this order: structure, readings, paths, state, repair, safety and cautions. */
public final class Registry {

  public static final List<Rule> RULES = List.of(
      new NoWayOn(),
      new OneAnswer(),
      new Unreached(),
      new PathCircle(),
      new QuantityLacking(),
      new NotShown(),
      new ReadingGap(),
      new ReadingOverlap(),
      new AnswerUnreachable(),
      new OverloadLeft(),
      new WindowSplit(),
      new LimitsTooClose(),
      new WordAnswers(),
      new SightAnswers(),
      new HealthyAgainstReading(),
      new AskedBefore(),
      new AgainOfNothing(),
      new LiveAfterIsolating(),
      new PresumedSetting(),
      new MeasuredLive(),
      new PlaceMissing(),
      new PointElsewhere(),
      new PanelClosed(),
      new RestoreOfNothing(),
      new RestoredDisconnected(),
      LeftBehind.BYPASSED,
      LeftBehind.OFF,
      LeftBehind.DISCONNECTED,
      LeftBehind.OPEN,
      new FindingAfterFinding(),
      new FindingWithoutRepair(),
      new ProofInWords(),
      new RepairElsewhere(),
      new RepairedAndProved(),
      new EndNotTagged(),
      new GuardNotNeeded(),
      new ControlLeft(),
      new DeadWork(),
      new CableEndLive(),
      new MeterNotProved(),
      new ProvedBeforeIsolating(),
      new ProveDeadPoints(),
      new IsolationNotTried(),
      new TryWithoutWay(),
      new StopAnswers(),
      new StillLiveUsed(),
      new PanelOpenedLive(),
      new BypassNotProved(),
      new SwitchedUnderLoad(),
      new RestoredOntoLoad(),
      new FuseReadLive(),
      new LineVoltageUnsaid(),
      new CautionLacking(),
      new NothingLockedOut(),
      new WhoUnsaid(),
      new FuseAgain(),
      new BreakerOntoGround(),
      new GasGoesOn(),
      new TooManyNames());

  private Registry() {}

  /** The problems that the rules find in a tree, in reading order. */
  public static List<Problem> inspect(Tree tree) {
    RuleContext context = RuleContext.of(tree);
    Problems out = new Problems();
    RULES.forEach(rule -> rule.inspect(context, out));
    return out.inReadingOrder();
  }
}
