package rungbook.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.action.ActionKind;
import rungbook.action.StateChange;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Quantity;
import rungbook.system.reader.VocabularyReader;
import rungbook.tree.reader.SystemNames;
import rungbook.tree.reader.TreeReader;

/** What each kind of step and each of its lines is read as. */
class StepsTest {

  private static Step first(String steps) {
    TreeReader.Read read = SingleTree.read(steps);
    assertEquals(List.of(), codes(read));
    return read.tree().steps().get(0);
  }

  private static List<String> codes(TreeReader.Read read) {
    return read.problems().stream().map(problem -> problem.code().name()).toList();
  }

  /** Such problems leave nothing unread, so what is missing is really missing. */
  @Test
  void aHiddenCharacterOrHtmlHidesNothingThatIsMissing() {
    for (String text : List.of("\0", "<b>bold</b>\n", "Text with a \u202E mark.\n")) {
      List<String> codes = codes(SingleTree.read(new Source("trees/t.md", text)));
      assertTrue(codes.containsAll(List.of("key-missing", "no-step")), () -> codes + " in " + text);
    }
  }

  @Test
  void meterCheckHasQuantityLeadsWindowAndPresumedState() {
    var check = (Step.MeterCheck) first("""
        ## Y at the board

        ```check
        measure: AC volts low impedance
        leads: Y, C
        at: furnace
        with: thermostat cooling, fan on
        expect: 24 to 28 V
        minutes: 1.5
        ```

        - 24 to 28: [Y at the board](#y-at-the-board)
        - anything else: [Elsewhere](#y-at-the-board)
        """);
    assertEquals(Quantity.AC_VOLTS_LOW_IMPEDANCE, check.quantity());
    assertEquals(List.of("Y", "C"), check.leads().stream().map(NameRef::text).toList());
    assertEquals(Optional.of(Range.between(new BigDecimal("24"), new BigDecimal("28"))), check.expected());
    assertEquals(List.of("thermostat cooling", "fan on"), check.presumed().stream().map(Setting::toString).toList());
    assertEquals("furnace", check.at().orElseThrow().text());
    assertEquals(new BigDecimal("1.5"), check.minutes());
    assertEquals(new Target.ToStep(0), check.ways().get(1).target());
  }

  @Test
  void everySenseIsRead() {
    for (Step.Sense sense : Step.Sense.values()) {
      var check = (Step.SenseCheck) first("## A\n\n```check\n" + sense.word()
          + ": one thing, another\n```\n\n- Yes, any: [A](#a)\n- no, No: [A](#a)\n");
      assertEquals(sense, check.sense());
      assertEquals(2, check.things().size());
      assertEquals(new Answer.Words(List.of("yes", "any")), check.ways().get(0).answer());
    }
  }

  @Test
  void actionsKeepTheOrderInWhichTheyStand() {
    Step task = first("""
        ## Make it dead

        ```task
        isolate: outdoor disconnect
        open: electrical cover
        prove dead: L1, L2
        known source: a live outlet, or a proving unit
        discharge: run capacitor
        set: thermostat off
        tag out: outdoor disconnect
        ```

        - done: [Make it dead](#make-it-dead)
        """);
    assertEquals(List.of(ActionKind.ISOLATE, ActionKind.OPEN, ActionKind.PROVE_DEAD, ActionKind.PROVE_DEAD,
        ActionKind.KNOWN_SOURCE, ActionKind.DISCHARGE, ActionKind.SET, ActionKind.TAG_OUT),
        task.actions().stream().map(Action::kind).toList());
    assertEquals("a live outlet, or a proving unit", task.actions().get(4).thing().text());
    assertEquals(List.of(new StateChange.SetPosition("thermostat", "off")), task.actions().get(6).changes());
  }

  @Test
  void findingsNameFaultsHealthOrWhomToCall() {
    var finding = (Step.Finding) first(
        "## A\n\n```finding\nfault: coil open, cable open\nrefer: the office\nevacuate: yes\nreplace: contactor\n"
            + "```\n");
    assertEquals(List.of("coil open", "cable open"), finding.faults().stream().map(NameRef::text).toList());
    assertEquals("the office", finding.refer().orElseThrow().text());
    assertTrue(finding.evacuate());
    assertEquals(List.of(ActionKind.REPLACE), finding.actions().stream().map(Action::kind).toList());
    assertEquals(BigDecimal.ZERO, finding.minutes());
    assertTrue(((Step.Finding) first("## A\n\n```finding\nhealthy: yes\n```\n")).healthy());
  }

  @Test
  void aFindingGoesOnWhereItHasAWay() {
    var finding = (Step.Finding) first(
        "## A\n\n```finding\nfault: coil open\n```\n\n- repair: [B](#b)\n- no part: [B](#b)\n\n## B\n\n"
            + "```end\nresult: referred\nrefer: the office\n```\n");
    assertEquals(List.of("repair", "no part"), finding.ways().stream().map(Way::written).toList());
    assertFalse(finding.isLast());
  }

  @Test
  void anEndSaysHowTheWorkEndedAndWhomToTell() {
    var end = (Step.End) first("## A\n\n```end\nresult: Left off and tagged\nrefer: an electrician\n```\n");
    assertEquals(Step.Result.LEFT_OFF_AND_TAGGED, end.result());
    assertEquals("an electrician", end.refer().orElseThrow().text());
    assertTrue(end.isLast());
    assertEquals(BigDecimal.ZERO, end.minutes());
  }

  @Test
  void aReferralSaysWhomToCall() {
    assertEquals(List.of("key-missing"), codes(SingleTree.read("## A\n\n```end\nresult: referred\n```\n")));
    assertEquals(List.of("key-missing"), codes(SingleTree.read("## A\n\n```end\n```\n")));
    assertEquals(List.of("value-missing"), codes(SingleTree.read("## A\n\n```end\nresult:\n```\n")));
    assertEquals(List.of("unknown-result"), codes(SingleTree.read("## A\n\n```end\nresult: done\n```\n")));
  }

  @Test
  void linesThatCannotBeReadAreReportedOnceAndNotAsMissing() {
    assertEquals(List.of("not-yaml"),
        codes(SingleTree.read("## A\n\n```check\nlook: light: lit\n```\n\n- yes: [A](#a)\n- no: [A](#a)\n")));
    assertEquals(List.of("not-yaml"), codes(SingleTree.read("## A\n\n```finding\nfault: [open\n```\n")));
    assertEquals(List.of("not-yaml"), codes(SingleTree.read(
        "## A\n\n```check\nmeasure: AC volts\nleads: R, C\nexpect: \"24\n```\n\n- 24 or more: [A](#a)\n- under 24: "
            + "[A](#a)\n")));
  }

  @Test
  void misspelledBlockHidesNothingElse() {
    assertEquals(List.of("unknown-block"), codes(SingleTree.read(
        "## A\n\n```check\nask: one\n```\n\n- yes: [B](#b)\n- no: [A](#a)\n\n## B\n\n```findng\nhealthy: yes\n```\n")));
  }

  @Test
  void blockWithoutALineIsNoCrash() {
    assertEquals(List.of("check-reads-nothing"), codes(SingleTree.read("## A\n\n```check\n```\n")));
    assertEquals(List.of("finding-says-nothing"), codes(SingleTree.read("## A\n\n```finding\n```")));
  }

  @Test
  void controlWithTheLongerNameIsMeant() {
    var document = DocumentReader.read(new Source("shared/systems/s.md",
        "---\ntitle: S\n---\n\n```locations\nroom: start\n```\n\n```controls\nfan: auto, on, at room\nfan speed: "
            + "low, high, at room\n```\n"));
    var names = new SystemNames(Optional.of(VocabularyReader.read("s", document)), document.source(),
        new rungbook.source.Problems());
    assertEquals(Optional.of("fan speed high"),
        names.setting("Fan speed high", document.frontSpan()).map(Setting::toString));
    assertEquals(Optional.of("fan on"), names.setting("fan on", document.frontSpan()).map(Setting::toString));
  }
}
