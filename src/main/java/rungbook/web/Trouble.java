package rungbook.web;

import java.util.List;
import java.util.Map;
import rungbook.store.Incoming;
import rungbook.store.Refused;

/** A request that cannot be done: what is wrong, how to put it right, and the HTTP status that says so to programs. */
final class Trouble extends RuntimeException {
  private final transient Report report;

  /** An RFC 9457 problem with Rungbook's hint; {@code more} are members of its own. */
  record Report(int status, String title, String detail, String hint, Map<String, Object> more) {
    public List<Ticked.Part> what() {
      return Ticked.parts(detail);
    }

    public List<Ticked.Part> advice() {
      return Ticked.parts(hint);
    }

    /** The address of what is there already; empty for any other trouble. */
    public String there() {
      return (String) more.getOrDefault("there", "");
    }

    /** The files that stopped an import; empty for any other trouble. */
    @SuppressWarnings("unchecked")
    public List<Incoming.Refusal> refused() {
      return (List<Incoming.Refusal>) more.getOrDefault("refused", List.of());
    }
  }

  private Trouble(Report report) {
    super(report.detail());
    this.report = report;
  }

  static Trouble of(int status, String title, String detail, String hint) {
    return new Trouble(new Report(status, title, detail, hint, Map.of()));
  }

  static Trouble badRequest(String detail, String hint) {
    return of(400, "This cannot be done as asked", detail, hint);
  }

  /** What the store does not take in. */
  static Trouble of(Refused refused) {
    if (refused instanceof Refused.TooLarge) {
      return tooLarge(refused.getMessage(), refused.hint());
    }
    return refused instanceof Refused.NotThere ? notFound(refused.getMessage(), refused.hint())
        : badRequest(refused.getMessage(), refused.hint());
  }

  static Trouble diskFull() {
    return of(507, "The disk is full", "the disk that holds the library is full, so nothing was saved",
        "make room on that disk, then save again; what was saved before is safe");
  }

  static Trouble notFound(String detail, String hint) {
    return of(404, "Not in the library", detail, hint);
  }

  /** @param path one that names no tree */
  static Trouble noTree(String path) {
    return notFound("`" + path + "` is no tree", "a tree lies directly in `trees/`");
  }

  static Trouble tooLarge(String detail, String hint) {
    return of(413, "Too large", detail, hint);
  }

  Trouble with(Map<String, Object> more) {
    return new Trouble(new Report(report.status(), report.title(), report.detail(), report.hint(), more));
  }

  Report report() {
    return report;
  }
}
