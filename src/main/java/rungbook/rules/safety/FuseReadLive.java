package rungbook.rules.safety;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Quantity;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** A fuse is tested by AC volts from one of its ends to the other, on a live circuit. */
public final class FuseReadLive implements Rule {

  static final Code FUSE_READ_LIVE = Code.of("fuse-read-live");

  private static final Set<Quantity> AC = Set.of(Quantity.AC_VOLTS, Quantity.AC_VOLTS_LOW_IMPEDANCE);

  private static final Function<SystemVariants, Map<Set<String>, Part.Fuse>> ACROSS = FuseReadLive::across;

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
    return context.tree().circuits().map(systems -> systems.once(ACROSS))
        .map(across -> across.get(check.leads().stream().map(NameRef::key).collect(Collectors.toSet())));
  }

  /** The fuses of any variant, by the points that leads across one are on. */
  private static Map<Set<String>, Part.Fuse> across(SystemVariants systems) {
    Map<Set<String>, Part.Fuse> across = new HashMap<>();
    systems.all().flatMap(system -> system.parts(Part.Fuse.class)).filter(fuse -> !fuse.breaker())
        .forEach(fuse -> fuse.branches().forEach(limb -> across.putIfAbsent(ends(limb), fuse)));
    return across;
  }

  private static Set<String> ends(PartBranch limb) {
    return List.of(limb.a(), limb.b()).stream().map(Terminal::point).collect(Collectors.toSet());
  }
}
