package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.pack.Verify;

class CardCommandTest {

  private static final String SYSTEM = "split-cooling-gas-furnace";

  @TempDir
  private Path folder;

  private Run card(String system, String file) {
    return Run.in(Path.of("."), "card", system, "--to", folder.resolve(file).toString());
  }

  private String page() throws IOException {
    Run run = card(SYSTEM, "card.html");
    assertEquals(0, run.exit(), run.err());
    return Files.readString(folder.resolve("card.html"));
  }

  /** The cells of a row of a place's table. */
  private static List<String> row(String page, String place, String leads) {
    String table = page.substring(page.indexOf("<caption>" + place + "</caption>"));
    Matcher row = Pattern.compile("<th scope=\"row\">" + Pattern.quote(leads) + "</th>((?:<td>[^<]*</td>)+)</tr>")
        .matcher(table);
    assertTrue(row.find(), leads + " is not in " + table);
    return List.of(row.group(1).replaceAll("^<td>|</td>$", "").split("</td><td>"));
  }

  /**
   * 24 to 28 V is good, and a conductor without its call has nothing (common practice, no source). The columns are no
   * call, heating, cooling, fan on.
   */
  @Test
  void theContactorHasItsVoltageWithTheCallForCoolingAlone() throws IOException {
    String page = page();
    assertEquals(List.of("0", "0", "24–28", "0"), row(page, "condenser", "Y to C"));
    // between R and an open W all of the supply is read; between R and W with the call, nothing
    List<String> heat = row(page, "thermostat", "R to W");
    assertEquals("0", heat.get(1));
    assertEquals(heat.get(0).replace("25", "24"), heat.get(2));
  }

  @Test
  void eachCallSaysWhatItStartsAndTheLadderHasEveryRung() throws IOException {
    String page = page();
    assertTrue(page.contains("<h3>cooling</h3><p>blower running, contactor pulled in, compressor running"), page);
    assertTrue(page.contains("<h3>fan on</h3><p>blower running</p>"), page);
    for (String part : List.of("door switch", "inducer motor", "limit", "low pressure switch", "compressor")) {
      assertTrue(page.substring(page.indexOf("class=\"rungs\"")).contains(part), part);
    }
  }

  @Test
  void itIsTheSameEachTimeAndVerifies() throws IOException {
    page();
    byte[] first = Files.readAllBytes(folder.resolve("card.html"));
    page();
    assertArrayEquals(first, Files.readAllBytes(folder.resolve("card.html")));
    assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(first));
  }

  @Test
  void misuseSaysWhatIsWrong() {
    assertEquals("rungbook: there is no system `no-such`\n  hint: name a file of `shared/systems`\n",
        card("no-such", "card.html").err());
    assertEquals(2, card(SYSTEM, "card.txt").exit());
    assertFalse(Files.exists(folder.resolve("card.txt")));
  }
}
