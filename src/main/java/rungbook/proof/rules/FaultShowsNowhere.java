package rungbook.proof.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.circuit.HiddenFaults;
import rungbook.markdown.Document;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;

/**
 * A fault that changes nothing anyone could notice, in the base and in every variant that has it: no tree can find it,
 * so its text is not what was meant.
 */
public final class FaultShowsNowhere {

  static final Code FAULT_SHOWS_NOWHERE = Code.of("fault-shows-nowhere");

  private FaultShowsNowhere() {}

  /** @param document the system's text; a problem is reported at the fault's own line */
  public static List<Problem> inspect(SystemVariants systems, Document document) {
    Set<String> hidden = keys(HiddenFaults.of(systems.base()));
    for (Variant variant : systems.variants()) {
      hidden.removeAll(shown(variant.system(), hidden));
    }
    return document.blocks("faults").stream().flatMap(block -> block.entries().stream())
        .filter(entry -> hidden.contains(Names.key(entry.key())))
        .map(entry -> Problem.at(FAULT_SHOWS_NOWHERE, document.source(), entry.keySpan()).with("fault", entry.key()))
        .toList();
  }

  /** Those of some faults that a variant has, and that show in it. */
  private static Set<String> shown(ControlSystem variant, Set<String> faults) {
    List<Fault> asked = variant.faults().stream().filter(fault -> faults.contains(fault.key())).toList();
    Set<String> shown = keys(asked);
    if (!asked.isEmpty()) {
      shown.removeAll(keys(HiddenFaults.of(variant.withFaults(asked))));
    }
    return shown;
  }

  private static Set<String> keys(List<Fault> faults) {
    return faults.stream().map(Fault::key).collect(Collectors.toCollection(HashSet::new));
  }
}
