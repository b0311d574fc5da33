package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.source.Problem;
import rungbook.source.Source;

class WaysTest {

  private static final String STEP = "## Step\n\n```check\nlook: fuse\n```\n\n";

  private static Document read(String after) {
    return DocumentReader.read(new Source("x.md", STEP + after));
  }

  private static List<String> codes(Document document) {
    return document.problems().stream().map(problem -> problem.code().name()).toList();
  }

  private static List<ParsedWay> ways(Document document) {
    return document.sections().get(0).ways();
  }

  @Test
  void eachItemHasAnswerLabelAndTargetWithTheirPlaces() {
    Document document = read("- 24 to 28 V: [Fuse \u00b5](#fuse-\u00b5)\n- `OL`: [Other](other.md#x)\n");
    assertEquals(List.of(), codes(document));
    ParsedWay first = ways(document).get(0);
    assertEquals("24 to 28 V", document.source().text(first.answerSpan()));
    assertEquals("#fuse-\u00b5", document.source().text(first.targetSpan()));
    assertEquals("Fuse \u00b5", first.label());
    assertEquals("- 24 to 28 V: [Fuse \u00b5](#fuse-\u00b5)", "- " + document.source().text(first.span()));
    assertEquals("other.md#x", ways(document).get(1).target());
  }

  @Test
  void looseListsAndOtherBulletsCount() {
    assertEquals(2, ways(read("* yes: [A](#a)\n\n* no: [B](#b)\n")).size());
    assertEquals(2, ways(read("+ yes: [A](#a)\n+ no: [B](#b)\n")).size());
  }

  @Test
  void proseListsAreNoWays() {
    Document document = read(
        "- wear gloves\n- see [the note](#note)\n\nThen answer:\n\n- yes: [A](#a)\n- no: [B](#b)\n");
    assertEquals(List.of(), codes(document));
    assertEquals(2, ways(document).size());
  }

  @Test
  void mixedListsSecondListsAndSpacesAreReported() {
    assertEquals(List.of("way-unreadable"), codes(read("- yes: [A](#a)\n- else call\n")));
    assertEquals(List.of("ways-twice"), codes(read("- yes: [A](#a)\n\ntext\n\n- no: [B](#b)\n")));
    Document spaced = read("- yes: [A b](#a b)\n- no: [B c](#b c)\n");
    assertEquals(List.of("link-with-space", "link-with-space"), codes(spaced));
    assertTrue(ways(spaced).isEmpty());
    assertEquals(2, spaced.sections().get(0).unread().size());
  }

  @Test
  void spacesInAnAddressAreReportedInAngleBracketsToo() {
    assertEquals(List.of("link-with-space"), codes(read("- yes: [A](<#a b>)\n- no: [B](#b)\n")));
  }

  @Test
  void chaptersHaveNoWays() {
    Document document = DocumentReader.read(new Source("x.md", "## Chapter\n\n- yes: [A](#a)\n- else call\n"));
    assertEquals(List.of(), codes(document));
    assertTrue(ways(document).isEmpty());
  }
}
