package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rungbook.pack.LeftOut;
import rungbook.pack.Pack;
import rungbook.pack.book.Book;
import rungbook.pack.onefile.LibraryFile;

/** All trees in one file, as a page and as a book; each is made again only when a pack changes. */
@ApplicationScoped
public class TogetherService {
  private final PackService packs;
  private volatile @Nullable Made<LibraryFile> page;
  private volatile @Nullable Made<Book> book;

  TogetherService(PackService packs) {
    this.packs = packs;
  }

  // the packs' digests say all that is in the file, so the same digests are the same file
  private record Made<T>(List<String> digests, List<LeftOut> leftOut, T file) {}

  /** Every tree without errors, as one page that names the others. */
  public LibraryFile page(CheckedLibrary library) {
    var made = known(page, library,
        () -> LibraryFile.of(packs.packed(library), packs.leftOut(library), PackService.material(library.library())));
    page = made;
    return made.file();
  }

  /** Every tree without errors, as one book that names the others. */
  public Book book(CheckedLibrary library) {
    var made = known(book, library,
        () -> Book.of(packs.packed(library), packs.leftOut(library), PackService.material(library.library())));
    book = made;
    return made.file();
  }

  private <T> Made<T> known(@Nullable Made<T> known, CheckedLibrary library, Supplier<T> anew) {
    var digests = packs.all(library).stream().map(Pack::digest).toList();
    var leftOut = packs.leftOut(library);
    return known != null && known.digests().equals(digests) && known.leftOut().equals(leftOut) ? known
        : new Made<>(digests, leftOut, anew.get());
  }
}
