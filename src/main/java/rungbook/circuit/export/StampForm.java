package rungbook.circuit.export;

import java.util.List;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.text.JsonText;

/** Admittances between two nodes: {@code [node, node, quantity]}. */
record StampForm(NodeNumbers nodes, Quantities quantities) {

  String of(BranchAdmittance siemens) {
    return JsonText.array(List.of(nodes.of(siemens.a()), nodes.of(siemens.b()),
        quantities.of(siemens.re(), siemens.im())));
  }

  String of(List<BranchAdmittance> all) {
    return JsonText.array(all.stream().filter(one -> one.a() != one.b()).map(this::of).toList());
  }
}
