package rungbook.web.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.practice.PracticePages;
import rungbook.pack.practice.PracticePage;

/** The practice pages of a library, made when the first of them is asked for and kept until the library changes. */
@ApplicationScoped
public class PracticeService {
  private Optional<Made> made = Optional.empty();

  private record Made(Library library, List<PracticePage> pages) {}

  /** A page for each system that some tree without errors is for. */
  @SuppressWarnings("ReferenceEquality") // a library is replaced and never changed
  public synchronized List<PracticePage> all(Library library) {
    if (made.filter(pages -> pages.library() == library).isEmpty()) {
      var trees = library.trees().stream().filter(CompiledTree::isSound).map(CompiledTree::tree).toList();
      made = Optional.of(new Made(library, PracticePages.of(trees, library.shared(), library.text())));
    }
    return made.orElseThrow().pages();
  }

  /** @param system the id of a system */
  public Optional<PracticePage> of(String system, Library library) {
    return all(library).stream().filter(page -> page.system().equals(system)).findFirst();
  }
}
