package rungbook.web;

/** What a failed start prints, for tests of other packages. */
public final class StartFailureReason {
  private StartFailureReason() {}

  public static String of(Throwable failure) {
    return StartFailure.reason(failure);
  }
}
