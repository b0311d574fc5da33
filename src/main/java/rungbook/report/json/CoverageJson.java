package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rungbook.proof.coverage.Cell;
import rungbook.proof.coverage.SystemCoverage;
import rungbook.proof.coverage.TreeFindings;
import rungbook.proof.report.Journey;

/** What the trees of a library find together, as JSON. */
final class CoverageJson {

  private CoverageJson() {}

  static void write(JsonGenerator json, List<SystemCoverage> library) throws IOException {
    for (SystemCoverage system : library) {
      Json.item(json, item -> write(item, system));
    }
  }

  private static void write(JsonGenerator json, SystemCoverage coverage) throws IOException {
    json.writeStringField("system", coverage.system());
    Json.array(json, "complaints", array -> {
      for (TreeFindings tree : coverage.trees()) {
        Json.item(array, item -> {
          item.writeStringField("tree", tree.tree());
          item.writeBooleanField("stated", tree.words().isPresent());
          item.writeNumberField("likelihood", tree.likelihood());
        });
      }
    });
    Json.array(json, "faults", array -> {
      for (SystemCoverage.Row row : coverage.faults()) {
        Json.item(array, item -> write(item, row, coverage.trees()));
      }
    });
    Json.array(json, "uncovered", array -> {
      for (SystemCoverage.Row row : coverage.uncovered()) {
        Json.item(array, item -> {
          item.writeStringField("case", row.fault());
          item.writeNumberField("likelihood", row.likelihood());
        });
      }
    });
  }

  private static void write(JsonGenerator json, SystemCoverage.Row row, List<TreeFindings> trees) throws IOException {
    json.writeStringField("case", row.fault());
    json.writeNumberField("likelihood", row.likelihood());
    Json.array(json, "complaints", array -> {
      for (int i = 0; i < trees.size(); i++) {
        Optional<Cell> cell = row.cells().get(i);
        if (cell.isPresent()) {
          String tree = trees.get(i).tree();
          Json.item(array, item -> write(item, tree, cell.get()));
        }
      }
    });
  }

  private static void write(JsonGenerator json, String tree, Cell cell) throws IOException {
    json.writeStringField("tree", tree);
    json.writeNumberField("gives", cell.gives());
    json.writeNumberField("checks", cell.journey().checks());
    json.writeNumberField("minutes", cell.journey().minutes());
    Json.array(json, "ends", array -> {
      for (Journey.Place place : cell.journey().places()) {
        Json.item(array, item -> ProofJsonJourney.write(item, place));
      }
    });
  }
}
