package rungbook.pack.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.pack.Samples;
import rungbook.tree.Tree;

class OutlineTest {

  @Test
  void fragmentStandsBehindTheStepThatTakesItIn() {
    Tree tree = Samples.STARTER.tree("outdoor-unit-silent-24-volts-present").orElseThrow().tree();
    List<Outline.Place> order = Outline.of(tree).order();
    int taker = order.stream().map(Outline.Place::anchor).toList().indexOf("make-it-dead-for-the-fan");
    assertEquals("make-it-dead-for-the-fan--call-off", order.get(taker + 1).anchor());
    assertEquals(order.get(taker).number() + ".1", order.get(taker + 1).number());
    assertEquals(tree.steps().size(), order.size());
  }

  @Test
  void headingsThatLookLikeATakenInStepGetAnAnchorOfTheirOwn() {
    Tree tree = Samples.tree("""
        ---
        title: Sample
        complaint: Nothing yet
        ---

        ## Dead

        ```take
        fragment: make-furnace-dead
        ```

        - proved dead: [Fine](#fine)
        - not off: [Fine](#fine)
        - still live: [Fine](#fine)

        ## Dead--switch off and lock

        ```finding
        healthy: yes
        ```

        ## Fine

        ```finding
        healthy: yes
        ```
        """);
    List<String> anchors = Outline.of(tree).order().stream().map(Outline.Place::anchor).toList();
    assertEquals(anchors.size(), anchors.stream().distinct().count(), anchors.toString());
  }
}
