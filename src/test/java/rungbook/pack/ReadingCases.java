package rungbook.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rungbook.pack.page.Edition;
import rungbook.pack.reading.Meaning;
import rungbook.pack.reading.ReadingZones;
import rungbook.pack.reading.VoltageBound;
import rungbook.pack.reading.Zone;
import rungbook.proof.CircuitFacts;
import rungbook.proof.HighestVoltages;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The table of what people type, what it is read as, and what comes of it. An outcome is a meaning and its ways: {@code
 * near under 3 / 3 to 20}. A reading of {@code -} is none: it is refused, or is a minus sign without a number yet.
 */
final class ReadingCases {

  /** @param highest what the circuit gives there, in volts; {@code -} if it is not known */
  record Check(String meter, String quantity, String points, String highest, String window, List<String> ways) {

    OptionalDouble volts() {
      return highest.equals("-") ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(highest));
    }

    private String leads() {
      return quantity.equals("AC amps") ? "Y" : points.equals("line") ? "L1, N" : "Y, C";
    }

    /** Every way leads to a finding of its own. */
    private String text() {
      var text = new StringBuilder("---\ntitle: t\ncomplaint: c\nsystem: split-cooling-gas-furnace\nmeter: " + meter
          + "\n---\n\n## Read\n\n```check\nmeasure: " + quantity + "\nleads: " + leads() + "\nat: furnace\nexpect: "
          + window + "\n```\n\n");
      ways.forEach(way -> text.append("- " + way + ": [F" + ways.indexOf(way) + "](#f" + ways.indexOf(way) + ")\n"));
      ways.forEach(way -> text.append("\n## F" + ways.indexOf(way) + "\n\n```finding\nhealthy: yes\n```\n"));
      return text.toString();
    }

    Tree tree() {
      return Samples.tree(text());
    }

    Pack pack() {
      Map<Integer, Double> byStep = new HashMap<>();
      volts().ifPresent(volts -> byStep.put(0, volts));
      return Pack.of(tree(), CircuitFacts.of(new HighestVoltages(byStep)), Samples.MATERIAL, Edition.draft());
    }

    ReadingZones zones() {
      Step.MeterCheck check = (Step.MeterCheck) tree().steps().get(0);
      Meter.Scale scale = tree().meter().scale(check.quantity()).orElseThrow();
      return new ReadingZones(check, scale, VoltageBound.of(check, scale, volts(), tree().system()));
    }

    String outcome(Zone zone) {
      return outcome(zone.meaning().code(), zone.ways());
    }

    String outcome(String meaning, List<Integer> taken) {
      List<String> written = taken.stream().map(ways::get).toList();
      return (meaning + " " + String.join(" / ", written)).strip();
    }
  }

  record Case(Check check, String typed, String reading, String outcome) {

    boolean isReading() {
      return !reading.equals("-");
    }

    @Override
    public String toString() {
      return check.quantity() + " " + check.points() + ", expected " + check.window() + ": " + typed;
    }
  }

  private ReadingCases() {}

  static List<Case> all() {
    try (var in = ReadingCases.class.getResourceAsStream("/rungbook/pack/typed-readings.tsv")) {
      var cases = new ArrayList<Case>();
      new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).forEach(line -> cases.add(of(line)));
      return cases;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Case of(String line) {
    String[] cells = line.split("\t", -1);
    var check = new Check(cells[0], cells[1], cells[2], cells[3], cells[4], Arrays.asList(cells[5].split("; ")));
    return new Case(check, cells[6], cells[7], cells[8]);
  }

  /** Every meaning has a case. */
  static boolean haveAll(List<Case> cases) {
    return Arrays.stream(Meaning.values())
        .allMatch(meaning -> cases.stream().anyMatch(one -> one.outcome().split(" ")[0].equals(meaning.code())));
  }
}
