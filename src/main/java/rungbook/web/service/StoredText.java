package rungbook.web.service;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import rungbook.library.ChangedOutside;
import rungbook.library.LibraryText;
import rungbook.source.Decoding;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.store.document.Revision;

/**
 * The store's newest revisions as a library's text. Each is compared with its hash first. A shared text or picture that
 * is not what was saved is left out, so that no tree takes it in.
 *
 * @param changedOutside paths of what is not what was saved
 */
record StoredText(LibraryText text, Set<String> changedOutside) {

  static StoredText of(List<Revision> heads) {
    var texts = new TreeMap<String, Source>();
    var pictures = new TreeMap<String, byte[]>();
    var problems = new ArrayList<Problem>();
    var changedOutside = new HashSet<String>();
    for (var head : heads) {
      var path = head.path().text();
      var isIntact = head.isIntact();
      if (!isIntact) {
        changedOutside.add(path);
      }
      if (!isIntact && !head.path().isTree()) {
        problems.add(ChangedOutside.in(new Source(path, head.path().isPicture() ? "" : head.text())));
      } else if (head.path().isPicture()) {
        pictures.put(path, head.content());
      } else {
        var decoded = Decoding.decode(path, head.content());
        texts.put(path, decoded.source());
        decoded.problem().ifPresent(problems::add);
      }
    }
    return new StoredText(new LibraryText(texts, pictures, problems), Set.copyOf(changedOutside));
  }
}
