/** A Java program that does nothing: what the JVM itself costs. */
final class Empty {

  private Empty() {}

  public static void main(String[] arguments) {
    // nothing is the point
  }
}
