package rungbook.ladder;

/**
 * What is drawn between two terminals: a path along a level line, its middle at 0. Simple line symbols
 * in the sense of the ladder symbols of NFPA 79 and of IEC 60617, from memory.
 */
public enum Symbol {
  /** Neighbors on a strip, with nothing between them. */
  NEIGHBOR(""),
  /** Two terminals that no part joins. */
  GAP(""),
  CONTACT("M-22 0h16m-0-12v24M6-12v24m0-12h16"),
  CONTACT_NORMALLY_CLOSED("M-22 0h16m-0-12v24M6-12v24m0-12h16M-10 12L10-12"),
  /** A blade that is open, for a switch moved by hand. */
  SWITCH("M-22 0h8a3 3 0 1 1 6 0a3 3 0 1 1-6 0m5-2L9-15M8 0a3 3 0 1 1 6 0a3 3 0 1 1-6 0m6 0h8"),
  /** A blade that is closed, for a switch that opens for safety. */
  INTERLOCK("M-22 0h8a3 3 0 1 1 6 0a3 3 0 1 1-6 0m3-3h22M8 0a3 3 0 1 1 6 0a3 3 0 1 1-6 0m6 0h8"),
  FUSE("M-22 0h6v-8h32v16h-32v-8M-16 0c8-12 12-6 16 0s8 12 16 0h6"),
  BREAKER("M-22 0h6a2 2 0 1 1 4 0a2 2 0 1 1-4 0m4-5c6-10 18-10 24 0M12 0a2 2 0 1 1 4 0a2 2 0 1 1-4 0m4 0h6"),
  COIL("M-22 0h8a14 14 0 1 1 28 0a14 14 0 1 1-28 0m28 0h8"),
  MOTOR("M-22 0h6a16 16 0 1 1 32 0a16 16 0 1 1-32 0m32 0h6M-7 7v-14l7 9l7-9v14",
      "M0-22v6a16 16 0 1 1 0 32a16 16 0 1 1 0-32m0 32v6M-7 7v-14l7 9l7-9v14"),
  WINDING("M-22 0h4a6 6 0 0 1 12 0a6 6 0 0 1 12 0a6 6 0 0 1 12 0h4"),
  /** A winding beside the core. */
  TRANSFORMER("M-22 0h4a6 6 0 0 1 12 0a6 6 0 0 1 12 0a6 6 0 0 1 12 0h4M-19 6h38m-38 4h38"),
  HEATER("M-22 0h6l3-8l6 16l6-16l6 16l6-16l6 16l3-8h2"),
  CAPACITOR("M-11 0h8m0-11v22M7-11q-8 11 0 22M3 0h8", 11),
  /** A source of alternating current. */
  SOURCE("M-22 0h8a14 14 0 1 1 28 0a14 14 0 1 1-28 0m28 0h8M-8 0c3-8 5-8 8 0s5 8 8 0",
      "M0-22v8a14 14 0 1 1 0 28a14 14 0 1 1 0-28m0 28v8M-8 0c3-8 5-8 8 0s5 8 8 0"),
  WIRE("M-22 0h44"),
  /** A conductor in a cable. */
  CABLE("M-22 0h44M-5-9a5 9 0 1 1 0 18a5 9 0 1 1 0-18"),
  LOAD("M-22 0h6v-11h32v22h-32v-11m32 0h6");

  private static final double SCALE = 1.3;

  private final String path;
  private final String upright;
  private final int half;

  Symbol(String path) {
    this(path, 22);
  }

  /** @param half how far the path goes to each side */
  Symbol(String path, int half) {
    this.path = path;
    this.upright = "";
    this.half = half;
  }

  /** @param upright the same along a line from top to bottom, where it has letters, which are not turned */
  Symbol(String path, String upright) {
    this.path = path;
    this.upright = upright;
    this.half = 22;
  }

  /** Along a level line. */
  public String path() {
    return path;
  }

  /** Along a line from top to bottom, its middle at 0. */
  public String uprightPath() {
    return upright.isEmpty() ? path : upright;
  }

  /** Whether {@link #uprightPath} is still to be turned by a quarter. */
  public boolean isTurned() {
    return upright.isEmpty();
  }

  /** How far it goes to each side of its middle. */
  public int half() {
    return half;
  }

  /** The width between the cells of two terminals. */
  public int width() {
    return this == NEIGHBOR ? 0 : (int) (2 * half * SCALE);
  }

  /** Where its middle is, and how large it is drawn. */
  public String placed(int x, int y) {
    return "translate(" + x + " " + y + ") scale(" + SCALE + ")";
  }

  /** Of a part's kind in the system's text. */
  public static Symbol ofKind(String kind) {
    return switch (kind) {
      case "contact" -> CONTACT;
      case "switch" -> SWITCH;
      case "interlock" -> INTERLOCK;
      case "fuse" -> FUSE;
      case "breaker" -> BREAKER;
      case "coil" -> COIL;
      case "motor" -> MOTOR;
      case "transformer" -> TRANSFORMER;
      case "heater" -> HEATER;
      case "capacitor" -> CAPACITOR;
      default -> LOAD;
    };
  }
}
