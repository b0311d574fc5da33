package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import rungbook.library.StarterProofs;
import rungbook.report.Report;
import rungbook.report.json.ProofJson;

/**
 * The whole proof of every starter tree, so that a changed constant of the circuit is seen as a changed proof: few
 * draws show that as well as many. With {@code -Dgolden.write=true} the files are written anew: read the difference.
 */
@Tag("slow")
class GoldenProofTest {

  private static final Path FOLDER = Path.of("src/test/resources/golden/proof");

  /** The digits that do not depend on which compiler of the JVM ran a loop; what is smaller than that is rounding. */
  private static final MathContext DIGITS = new MathContext(6);

  private static final BigDecimal NOTHING = new BigDecimal("1e-9");

  @TestFactory
  Stream<DynamicTest> everyProofIsAsItWas() throws IOException {
    var proofs = new ArrayList<JsonNode>();
    new ObjectMapper().readTree(json()).get("proofs").forEach(proofs::add);
    DynamicTest all = DynamicTest.dynamicTest("every tree has its file", () -> assertEquals(names(proofs), files()));
    List<DynamicTest> each = proofs.stream().map(proof -> DynamicTest.dynamicTest(name(proof), () -> compare(proof)))
        .toList();
    return Stream.concat(each.stream(), Stream.of(all));
  }

  private static String json() {
    List<ProofJson.Of> proofs = StarterProofs.ids().stream()
        .map(id -> new ProofJson.Of("trees/" + id + ".md", StarterProofs.ofFewDraws(id), Optional.empty(),
            Optional.empty()))
        .toList();
    return ProofJson.of(proofs, new Report(proofs.size(), List.of(), List.of()));
  }

  private static void compare(JsonNode proof) throws IOException {
    Path file = FOLDER.resolve(name(proof));
    String text = print(rounded(proof));
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, text);
    }
    assertEquals(Files.readString(file), text);
  }

  private static String name(JsonNode proof) {
    return Path.of(proof.get("file").asText()).getFileName().toString().replace(".md", ".json");
  }

  private static TreeSet<String> names(List<JsonNode> proofs) {
    return proofs.stream().map(GoldenProofTest::name).collect(TreeSet::new, TreeSet::add, TreeSet::addAll);
  }

  private static TreeSet<String> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.map(file -> file.getFileName().toString()).collect(TreeSet::new, TreeSet::add, TreeSet::addAll);
    }
  }

  private static JsonNode rounded(JsonNode node) {
    if (node instanceof ObjectNode object) {
      object.fieldNames().forEachRemaining(name -> object.replace(name, rounded(object.get(name))));
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        array.set(i, rounded(array.get(i)));
      }
    }
    return node.isDouble() ? DecimalNode.valueOf(rounded(node.decimalValue())) : node;
  }

  private static BigDecimal rounded(BigDecimal value) {
    BigDecimal kept = value.abs().compareTo(NOTHING) < 0 ? BigDecimal.ZERO : value.round(DIGITS).stripTrailingZeros();
    return new BigDecimal(kept.toPlainString());
  }

  /** A line for each field, and for each member of a list: a difference is then a line. */
  private static String print(JsonNode proof) {
    var lines = new ArrayList<String>();
    proof.fields().forEachRemaining(field -> {
      boolean list = field.getValue().isArray() && !field.getValue().isEmpty();
      var members = new ArrayList<String>();
      field.getValue().forEach(member -> members.add("\n    " + member));
      lines.add(
          "  \"" + field.getKey() + "\": " + (list ? "[" + String.join(",", members) + "\n  ]" : field.getValue()));
    });
    return "{\n" + String.join(",\n", lines) + "\n}\n";
  }
}
