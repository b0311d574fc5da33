package rungbook.pack.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.ladder.Element;
import rungbook.ladder.RailPath;
import rungbook.ladder.RailPaths;
import rungbook.ladder.Rung;
import rungbook.ladder.VoltageBlock;
import rungbook.proof.Suspects;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.text.Markup;

/**
 * The pictures of one system's circuit in one file. What several of them show is in the file once, in
 * {@link #definitions}, where references within it can be shown.
 */
public final class CircuitPictures {

  private final SystemVariants systems;
  private final String anchor;
  private final RailPaths paths;
  private final FaultNumbers numbers;
  private final Map<String, String> ids = new HashMap<>();
  private final Map<String, String> defined = new LinkedHashMap<>();
  private final Upright.Pieces pieces;

  private CircuitPictures(SystemVariants systems, String anchor, boolean isShared) {
    this.systems = systems;
    this.anchor = anchor;
    this.paths = RailPaths.of(systems.base());
    this.numbers = new FaultNumbers(systems);
    this.pieces = isShared ? this::reference : CircuitPictures::inPlace;
  }

  /** @param anchor of the whole ladder; those of what is shared begin with it */
  public static CircuitPictures shared(SystemVariants systems, String anchor) {
    return new CircuitPictures(systems, anchor, true);
  }

  /** Each picture whole, for readers that do not know references. */
  public static CircuitPictures whole(SystemVariants systems, String anchor) {
    return new CircuitPictures(systems, anchor, false);
  }

  private String reference(String key, String svg, int y) {
    String id = ids.computeIfAbsent(key, any -> anchor + ids.size());
    int tag = svg.indexOf('>') < svg.indexOf(' ') ? svg.indexOf('>') : svg.indexOf(' ');
    defined.putIfAbsent(id, svg.substring(0, tag) + " id=\"" + id + "\"" + svg.substring(tag));
    return "<use href=\"#" + id + "\"" + (y == 0 ? "" : " y=\"" + y + "\"") + "/>";
  }

  private static String inPlace(String key, String svg, int y) {
    return y == 0 ? svg : "<g transform=\"translate(0 " + y + ")\">" + svg + "</g>";
  }

  /** The anchor of the whole ladder. */
  public String anchor() {
    return anchor;
  }

  public StillPossible suspects(Suspects suspects) {
    return new StillPossible(numbers, suspects);
  }

  /** The rungs that the leads of a check touch, with a tag at each lead; empty if the circuit knows none of them. */
  public String of(List<Terminal> leads) {
    List<LeadMark> marks = LeadMark.of(leads);
    var html = new StringBuilder();
    for (RailPath path : paths.through(leads)) {
      html.append(picture(path, marks.stream().filter(mark -> isOn(mark, path)).toList()));
    }
    return html.toString();
  }

  /** Ground is at every picture. */
  private boolean isOn(LeadMark mark, RailPath path) {
    return mark.terminal().isGround() || node(mark, path) >= 0;
  }

  private int node(LeadMark mark, RailPath path) {
    String name = paths.name(mark.terminal());
    for (int i = 0; i < path.nodes().size(); i++) {
      if (path.nodes().get(i).names().contains(name)) {
        return i;
      }
    }
    return -1;
  }

  private String picture(RailPath path, List<LeadMark> marks) {
    Upright.Drawn drawn = Upright.of(path.nodes(), path.elements(), path.isLine(), this::faults, pieces);
    var svg = new StringBuilder(pieces.at("p" + drawn.svg(), "<g>" + drawn.svg() + "</g>", 0));
    List<String> words = new ArrayList<>();
    List<Integer> taken = new ArrayList<>();
    int height = drawn.height();
    for (LeadMark mark : marks) {
      words.add(mark.words() + " " + paths.name(mark.terminal()));
      int node = node(mark, path);
      if (node < 0) {
        svg.append(mark.atGround(height, paths.name(mark.terminal())));
        height += LeadMark.GROUND_HEIGHT;
      } else {
        svg.append(mark.at(drawn.levels().get(node), taken.contains(node)));
        taken.add(node);
      }
    }
    Rung rung = path.rung();
    return svg(height, "Rung " + rung.number() + ", " + rung.name() + ": " + String.join(", ", words) + ".",
        svg.toString());
  }

  private String faults(Element element) {
    return FaultCode.of(numbers.in(element));
  }

  private static String svg(int height, String words, String inside) {
    return "<svg class=\"upright\" role=\"img\" aria-label=\"" + Markup.escape(words) + "\" viewBox=\"0 0 "
        + Upright.WIDTH + " " + height + "\">" + inside + "</svg>\n";
  }

  /** The whole ladder with what can be wrong in it, without the section around it. */
  public String ladder() {
    var html = new StringBuilder("<h2>Circuit of " + Markup.escape(paths.ladder().title()) + "</h2>\n");
    if (!systems.variants().isEmpty()) {
      html.append("<p>The usual form of the system. A variant differs in some parts.</p>\n");
    }
    paths.ladder().blocks().forEach(block -> block(html, block));
    html.append("<details class=\"faults\"><summary>Faults that this circuit is tried with</summary><ol>\n");
    numbers.names().forEach(name -> html.append("<li>").append(Markup.escape(name)).append("</li>\n"));
    return html.append("</ol></details>\n").toString();
  }

  private void block(StringBuilder html, VoltageBlock block) {
    html.append("<h3>").append(Markup.escape(block.title())).append(block.isLine() ? ", line voltage" : "")
        .append("</h3>\n");
    for (Rung rung : block.rungs()) {
      Upright.Drawn drawn = Upright.of(rung.nodes(), rung.elements(), block.isLine(), this::faults, pieces);
      html.append("<h4>").append(Markup.escape(rung.number() + " " + rung.name() + from(rung))).append("</h4>\n")
          .append(svg(drawn.height(), rung.words(), drawn.svg()));
    }
  }

  private static String from(Rung rung) {
    return (rung.from() == 0 ? "" : ", from rung " + rung.from()) + (rung.to() == 0 ? "" : ", to rung " + rung.to());
  }

  /** What the pictures refer to; empty if they refer to nothing. */
  public String definitions() {
    String all = String.join("", defined.values());
    return all.isEmpty() ? ""
        : "<svg class=\"drawings upright\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>" + all
            + "</defs></svg>\n";
  }
}
