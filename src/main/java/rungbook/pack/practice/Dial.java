package rungbook.pack.practice;

import java.util.Arrays;
import java.util.Optional;
import rungbook.system.Quantity;

/** A position of the meter's dial that the circuit can be read at, by the name that the script has for it. */
enum Dial {
  VOLTS("volts", Quantity.AC_VOLTS, "AC volts"),
  LOW("low", Quantity.AC_VOLTS_LOW_IMPEDANCE, "AC volts, low impedance"),
  OHMS("ohms", Quantity.OHMS, "Ohms"),
  MICROFARADS("microfarads", Quantity.MICROFARADS, "Microfarads"),
  AMPS("amps", Quantity.AC_AMPS, "AC amps, clamp");

  private final String script;
  private final Quantity quantity;
  private final String words;

  Dial(String script, Quantity quantity, String words) {
    this.script = script;
    this.quantity = quantity;
    this.words = words;
  }

  String script() {
    return script;
  }

  Quantity quantity() {
    return quantity;
  }

  String words() {
    return words;
  }

  static Optional<Dial> of(Quantity quantity) {
    return Arrays.stream(values()).filter(dial -> dial.quantity == quantity).findFirst();
  }
}
