package rungbook.proof.rules;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.circuit.HiddenFaults;
import rungbook.markdown.Document;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.SystemVariants;

/** A fault that changes nothing anyone could notice: no tree can find it, so its text is not what was meant. */
public final class FaultShowsNowhere {

  static final Code FAULT_SHOWS_NOWHERE = Code.of("fault-shows-nowhere");

  private FaultShowsNowhere() {}

  /** @param document the system's text; a problem is reported at the fault's own line */
  public static List<Problem> inspect(SystemVariants systems, Document document) {
    var hidden = HiddenFaults.of(systems.base()).stream().map(Fault::key).collect(Collectors.toSet());
    return document.blocks("faults").stream().flatMap(block -> block.entries().stream())
        .filter(entry -> hidden.contains(Names.key(entry.key())))
        .map(entry -> Problem.at(FAULT_SHOWS_NOWHERE, document.source(), entry.keySpan()).with("fault", entry.key()))
        .toList();
  }
}
