package rungbook.pack.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Document;
import rungbook.markdown.Prose;
import rungbook.markdown.Section;
import rungbook.system.Names;
import rungbook.tree.Caution;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The prose of a tree and of the shared texts it names, with links that lead to places in the pack. */
final class PackProse {

  private static final Pattern PICTURE = Pattern.compile("(<img(?: src=\"data:image/svg[^\"]*+\")?)([^>]*+>)");

  private final Tree tree;
  private final PackInput material;
  private final Outline outline;
  private final Medium medium;
  private final Map<Scope, Prose> read = new HashMap<>();
  private final Map<Part, String> written = new HashMap<>();

  /** A file as one step takes it; a fragment taken twice has different anchors each time. */
  private record Scope(String file, String prefix) {}

  private record Part(Scope scope, int start) {}

  PackProse(Tree tree, PackInput material, Outline outline, Medium medium) {
    this.tree = tree;
    this.material = material;
    this.outline = outline;
    this.medium = medium;
  }

  String introduction() {
    return framed(prose(tree.document(), "").introduction());
  }

  /** The text before the first heading of a fragment, at the fragment's first step; empty at any other. */
  String opening(Step step) {
    return isFirstOfFragment(step) ? framed(prose(step.header().document(), Outline.prefix(step)).introduction()) : "";
  }

  String of(Step step) {
    return of(step.header().document(), Outline.prefix(step), step.header().section());
  }

  /** @param prefix of the slug, in the ids of the steps of the same file */
  String of(Document document, String prefix, Section section) {
    return written.computeIfAbsent(new Part(new Scope(document.source().name(), prefix), section.span().start()),
        any -> framed(prose(document, prefix).of(section)));
  }

  /** A picture in a frame of its own, which colors it in a dim light; a drawing's spaces need no escape. */
  private static String framed(String html) {
    return PICTURE.matcher(html).replaceAll(picture -> Matcher.quoteReplacement("<span class=\"picture\">"
        + picture.group(1).replace("%20", " ") + picture.group(2) + "</span>"));
  }

  boolean isFirstOfFragment(Step step) {
    return !Outline.prefix(step).isEmpty() && step.header().document().sections().stream()
        .filter(section -> section.isStep() && !Chapters.isExit(section)).findFirst()
        .filter(step.header().section()::equals).isPresent();
  }

  /** The text of a caution or a qualification. */
  String whole(Document shared) {
    return framed(prose(shared, "").whole());
  }

  private Prose prose(Document document, String prefix) {
    return read.computeIfAbsent(new Scope(document.source().name(), prefix),
        any -> Prose.of(document, targets(document, prefix)));
  }

  private Prose.Targets targets(Document document, String prefix) {
    return new Prose.Targets() {
      @Override
      public Optional<String> link(String written) {
        return written.startsWith("#") ? outline.place(prefix + written.substring(1)).map(place -> "#" + place.anchor())
            : away(written);
      }

      @Override
      public Optional<String> picture(String written) {
        String file = document.source().name();
        return medium.picture(file.substring(0, file.lastIndexOf('/') + 1) + written);
      }
    };
  }

  private Optional<String> away(String written) {
    int end = written.indexOf(".md");
    String id = end < 0 ? "" : written.substring(0, end);
    if (!material.shared().trees().contains(id)) {
      return Prose.Targets.safeLink(written);
    }
    String after = written.substring(end + ".md".length());
    return medium.address(id, after.startsWith("#") ? Optional.of(after.substring(1)) : Optional.empty());
  }

  Optional<Caution> caution(String name) {
    return Optional.ofNullable(material.shared().cautions().get(Names.key(name)));
  }
}
