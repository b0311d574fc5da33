package rungbook.proof;

/** Steps of trees on the lamp of {@link MadeUp}, as text: its lever, a check at each place, and findings. */
public final class LampSteps {

  public static final String SOUND = finding("Sound", "healthy: yes");

  private LampSteps() {}

  /** The lever on, which takes two minutes, and the way on. */
  public static String on(String next) {
    return "## On\n\n```task\nset: lever on\nat: hall\nminutes: 2\n```\n\n- done: " + next + "\n\n";
  }

  /** The lever on, then the voltage across the wire: 20 to 30 V is right. */
  public static String onAndVolts(String place, String... ways) {
    return on("[Volts](#volts)") + volts(place, ways);
  }

  public static String volts(String place, String... ways) {
    return reading("A, B", place, "20 to 30 V", ways);
  }

  /** The step Volts with other leads or another range, which takes a minute. */
  public static String reading(String leads, String place, String expect, String... ways) {
    return "## Volts\n\n```check\nmeasure: AC volts\nleads: " + leads + "\nat: " + place + "\nexpect: " + expect
        + "\nminutes: 1\n```\n\n" + ways(ways);
  }

  /** Whether the lamp glows, which takes a minute. */
  public static String glow(String yes, String no) {
    return "## Glow\n\n```check\nlook: glow\nat: hall\nminutes: 1\n```\n\n" + ways("yes: " + yes, "no: " + no);
  }

  public static String finding(String title, String... lines) {
    return "## " + title + "\n\n```finding\n" + String.join("\n", lines) + "\n```\n\n";
  }

  private static String ways(String... ways) {
    return "- " + String.join("\n- ", ways) + "\n\n";
  }
}
