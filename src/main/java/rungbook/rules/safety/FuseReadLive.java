package rungbook.rules.safety;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.tree.NameRef;
import rungbook.tree.Quantity;
import rungbook.tree.Step;

/** A fuse is tested by AC volts from one of its ends to the other, on a live circuit. */
public final class FuseReadLive implements Rule {

  static final Code FUSE_READ_LIVE = Code.of("fuse-read-live");

  private static final Set<Quantity> AC = Set.of(Quantity.AC_VOLTS, Quantity.AC_VOLTS_LOW_IMPEDANCE);

  @Override
  public List<Code> codes() {
    return List.of(FUSE_READ_LIVE);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    for (int step = 0; step < steps.size(); step++) {
      if (context.graph().isReached(step) && steps.get(step) instanceof Step.MeterCheck check
          && AC.contains(check.quantity())) {
        fuse(check, context).ifPresent(fuse -> out.add(
            Problem.at(FUSE_READ_LIVE, check.source(), check.quantitySpan()).with("fuse", fuse.name())));
      }
    }
  }

  private static Optional<Part.Fuse> fuse(Step.MeterCheck check, RuleContext context) {
    Set<String> leads = check.leads().stream().map(NameRef::key).collect(Collectors.toSet());
    return context.tree().circuits().stream().flatMap(SystemVariants::all)
        .flatMap(system -> system.parts(Part.Fuse.class))
        .filter(fuse -> !fuse.breaker() && fuse.branches().stream().anyMatch(limb -> leads.equals(ends(limb))))
        .findFirst();
  }

  private static Set<String> ends(PartBranch limb) {
    return List.of(limb.a(), limb.b()).stream().map(Terminal::point).collect(Collectors.toSet());
  }
}
