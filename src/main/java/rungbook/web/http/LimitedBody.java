package rungbook.web.http;

import java.io.IOException;
import java.io.InputStream;

/** A request's body that ends in an exception when it is larger, or comes more slowly, than its route takes. */
public final class LimitedBody extends InputStream {
  private final InputStream body;
  private final long mostBytes;
  private final long deadlineNanos;
  private long bytes;

  /** What was wrong with the body; an {@link IOException}, since JSON readers let only those through as they are. */
  public static final class Unread extends IOException {
    private final transient ProblemException problem;

    Unread(ProblemException problem) {
      super(problem.getMessage());
      this.problem = problem;
    }

    public ProblemException problem() {
      return problem;
    }
  }

  /** @param deadlineNanos by when it has to be there, as {@link System#nanoTime} counts */
  LimitedBody(InputStream body, long mostBytes, long deadlineNanos) {
    this.body = body;
    this.mostBytes = mostBytes;
    this.deadlineNanos = deadlineNanos;
  }

  @Override
  public int read() throws IOException {
    var one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] to, int offset, int length) throws IOException {
    var read = readSome(to, offset, length);
    bytes += Math.max(0, read);
    if (bytes > mostBytes) {
      throw new Unread(BodyLimits.tooLarge(mostBytes));
    }
    if (System.nanoTime() > deadlineNanos) {
      throw new Unread(
          ProblemException.of(408, "Too slow", "the request's body did not arrive in time", "send it again"));
    }
    return read;
  }

  private int readSome(byte[] to, int offset, int length) throws IOException {
    try {
      return body.read(to, offset, length);
    } catch (IOException broken) {
      throw new Unread(ProblemException.badRequest("the request's body ended before it was complete", "send it again"));
    }
  }

  @Override
  public int available() throws IOException {
    return body.available();
  }

  // closing the server's own stream would wait for the rest of the body, and a refusal must not wait
  @Override
  public void close() {}
}
