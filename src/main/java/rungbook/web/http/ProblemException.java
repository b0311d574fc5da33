package rungbook.web.http;

import java.util.List;
import java.util.Map;
import rungbook.store.document.ImportBatch;
import rungbook.store.document.Refused;
import rungbook.text.InlineCode;

/** A request that cannot be done: what is wrong, how to put it right, and the HTTP status that says so to programs. */
public final class ProblemException extends RuntimeException {
  private final transient Report report;

  /** An RFC 9457 problem with Rungbook's hint; {@code more} are members of its own. */
  public record Report(int status, String title, String detail, String hint, Map<String, Object> more) {
    public List<InlineCode.Part> what() {
      return InlineCode.parts(detail);
    }

    public List<InlineCode.Part> advice() {
      return InlineCode.parts(hint);
    }

    /** The address of what is there already; empty for any other problem. */
    public String there() {
      return (String) more.getOrDefault("there", "");
    }

    /** The files that stopped an import; empty for any other problem. */
    @SuppressWarnings("unchecked")
    public List<ImportBatch.Refusal> refused() {
      return (List<ImportBatch.Refusal>) more.getOrDefault("refused", List.of());
    }
  }

  private ProblemException(Report report) {
    super(report.detail());
    this.report = report;
  }

  public static ProblemException of(int status, String title, String detail, String hint) {
    return new ProblemException(new Report(status, title, detail, hint, Map.of()));
  }

  public static ProblemException badRequest(String detail, String hint) {
    return of(400, "This cannot be done as asked", detail, hint);
  }

  /** A problem for what the store refuses. */
  public static ProblemException of(Refused refused) {
    if (refused instanceof Refused.TooLarge) {
      return tooLarge(refused.says(), refused.hint());
    }
    return refused instanceof Refused.NotThere ? notFound(refused.says(), refused.hint())
        : badRequest(refused.says(), refused.hint());
  }

  static ProblemException diskFull() {
    return of(507, "The disk is full", "the disk that holds the library is full, so nothing was saved",
        "make room on that disk, then save again; what was saved before is safe");
  }

  static ProblemException fileGone(String says) {
    return of(503, "The library's file is gone", says + ", so this change is not kept",
        "put the file back; or download the library as a zip at /transfer while the server still runs, "
            + "stop the server, put a backup of the whole data folder in place, start again and import the zip");
  }

  public static ProblemException notFound(String detail, String hint) {
    return of(404, "Not in the library", detail, hint);
  }

  /** @param path one that names no tree */
  public static ProblemException noTree(String path) {
    return notFound("`" + path + "` is no tree", "a tree is a file directly in `trees/`");
  }

  public static ProblemException tooLarge(String detail, String hint) {
    return of(413, "Too large", detail, hint);
  }

  public ProblemException with(Map<String, Object> more) {
    return new ProblemException(new Report(report.status(), report.title(), report.detail(), report.hint(), more));
  }

  public Report report() {
    return report;
  }
}
