package rungbook.tree;

import java.util.EnumSet;
import java.util.Set;
import rungbook.markdown.Document;

/**
 * What the person who does a step must hold.
 *
 * @param id the file's name without {@code .md}
 * @param rule the regulation that asks for it: {@code 40 CFR 82.161}
 * @param covers the kinds of work that its holder may do
 */
public record Qualification(String id, String title, String rule, Set<WorkKind> covers, Document document) {

  public Qualification {
    covers = Set.copyOf(covers);
  }

  /** Stands for a name that is not found. It covers everything: the name has its own problem, and one is enough. */
  public static Qualification unknown(NameRef name, Document document) {
    return new Qualification(name.text(), name.text(), "", EnumSet.allOf(WorkKind.class), document);
  }

  /** The title and its rule as one line: {@code Qualified person — 29 CFR 1910.332}. */
  public String line() {
    return rule.isEmpty() ? title : title + " — " + rule;
  }
}
