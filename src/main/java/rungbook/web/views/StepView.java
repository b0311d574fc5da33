package rungbook.web.views;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import java.util.Optional;

/**
 * A step as a page shows it.
 *
 * @param kind what kind of step, in a word, such as {@code Check}; {@code letter} stands for it in the map
 * @param facts the block's lines in words
 * @param takenFrom the fragment it came from; empty for the tree's own
 */
public record StepView(String id, String title, String kind, String letter, int line, List<Fact> facts,
    List<WhoView> who, List<CautionView> cautions,
    List<Lead> leads, String prose, List<WayView> ways, String takenFrom) {

  record Fact(String name, String value) {}

  /** @param href the qualification's page; empty if there is none */
  record WhoView(String title, String rule, String href) {}

  /** @param level danger, warning, caution or notice */
  record CautionView(String title, String level, String hazard, String avoid, String href) {}

  /** A meter point and the color of the lead that goes there, in a word. */
  record Lead(String color, String point) {}

  /** @param href where the way leads; empty when nowhere */
  record WayView(String answer, String label, Optional<String> href) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance step(StepView step);
  }

  /** The step by itself, as HTML. */
  public String html() {
    return Templates.step(this).render();
  }

  public String shape() {
    return switch (kind) {
      case "Check" -> "contact";
      case "Finding" -> "coil";
      case "End" -> "rail";
      default -> "block";
    };
  }
}
