package rungbook.pack.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.pack.PackedTree;
import rungbook.pack.page.Html;
import rungbook.pack.page.PackInput;
import rungbook.pack.page.TitleBlock;
import rungbook.pack.page.TreeText;

/** The trees of a book as chapters, which lead to each other. */
record BookChapters(List<BookChapter> all, List<BookPictures.Picture> pictures) {

  /** In the order of the trees' names, as in a folder of packs. */
  static BookChapters of(List<PackedTree> trees, PackInput material) {
    List<PackedTree> sorted = trees.stream().sorted(Comparator.comparing(tree -> tree.tree().id())).toList();
    Map<String, String> files = new LinkedHashMap<>();
    sorted.forEach(tree -> files.put(tree.tree().id(), "chapter-" + (files.size() + 1) + ".xhtml"));
    BookPictures pictures = new BookPictures(material.pictures());
    List<String> pages = sorted.stream()
        .map(tree -> page(tree, material, new ChapterMedium(tree.digest(), files, pictures))).toList();
    Map<String, Set<String>> anchors = new LinkedHashMap<>();
    for (int i = 0; i < pages.size(); i++) {
      anchors.put(file(i, files), Anchors.in(pages.get(i)));
    }
    var chapters = new ArrayList<BookChapter>();
    for (int i = 0; i < pages.size(); i++) {
      String file = file(i, files);
      chapters.add(new BookChapter(file, sorted.get(i), Xhtml.of(pages.get(i), new Links(file, anchors))));
    }
    return new BookChapters(List.copyOf(chapters), pictures.shownIn(pages));
  }

  private static String file(int chapter, Map<String, String> files) {
    return List.copyOf(files.values()).get(chapter);
  }

  private static String page(PackedTree tree, PackInput material, ChapterMedium medium) {
    var html = new Html();
    TitleBlock.head(html, tree.tree().title(), tree.tree().complaint());
    return html.raw(TreeText.of(tree.tree(), tree.facts(), material, tree.edition(), medium)).toString();
  }

  /** Whether whoever cannot see the pictures can read what they show: an author may have left the words out. */
  boolean areInWords() {
    return all.stream().noneMatch(chapter -> chapter.content().contains(" alt=\"\""));
  }

  List<String> titles() {
    return all.stream().map(BookChapter::title).collect(Collectors.toUnmodifiableList());
  }
}
