package rungbook.pack.practice;

import static rungbook.text.JsonText.array;
import static rungbook.text.JsonText.string;

import java.util.List;
import rungbook.circuit.export.Interned;
import rungbook.ladder.Element;
import rungbook.ladder.Ladder;
import rungbook.ladder.Node;
import rungbook.ladder.Rung;
import rungbook.ladder.VoltageBlock;
import rungbook.system.ControlSystem;
import rungbook.text.JsonText;

/**
 * A ladder for a page that draws it with points to press: for each block its title, whether it is at line voltage, and
 * its rungs; for each rung its number and name, the points of its nodes, and its elements with name, note and symbol.
 */
final class LadderForm {

  private final Interned rungs = new Interned();
  private final Interned symbols = new Interned();

  String of(ControlSystem system) {
    return array(Ladder.of(system).blocks().stream().map(this::block).toList());
  }

  private String block(VoltageBlock block) {
    return array(List.of(string(block.title()), block.isLine() ? 1 : 0,
        array(block.rungs().stream().map(rung -> rungs.of(rung(rung))).toList())));
  }

  private String rung(Rung rung) {
    return array(List.of(rung.number(), string(rung.name()), array(rung.nodes().stream().map(this::node).toList()),
        array(rung.elements().stream().map(this::element).toList())));
  }

  private String node(Node node) {
    return array(node.names().stream().map(JsonText::string).toList());
  }

  private String element(Element element) {
    return array(List.of(string(element.name()), string(element.note()), symbols.of(element.symbol().path())));
  }

  /** The rungs that the blocks name by number. */
  String rungs() {
    return array(rungs.all());
  }

  /** The paths of the symbols that elements name by number. */
  String symbols() {
    return array(symbols.all().stream().map(JsonText::string).toList());
  }
}
