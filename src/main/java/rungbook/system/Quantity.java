package rungbook.system;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A quantity that a meter measures, and the unit of its readings. */
public enum Quantity {
  AC_VOLTS("AC volts", "V", 2),
  AC_VOLTS_LOW_IMPEDANCE("AC volts low impedance", "V", 2),
  DC_VOLTS("DC volts", "V", 2),
  OHMS("ohms", "Ω", 2),
  AC_AMPS("AC amps", "A", 1),
  DC_MICROAMPS("DC microamps", "µA", 0),
  MICROFARADS("microfarads", "µF", 2),
  TEMPERATURE("temperature", "°F", 0),
  TEMPERATURE_DIFFERENCE("temperature difference", "°F", 0),
  PRESSURE("pressure", "in. w.c.", 0);

  private static final Map<String, Quantity> BY_KEY = Arrays.stream(values())
      .collect(Collectors.toUnmodifiableMap(quantity -> Names.key(quantity.words), quantity -> quantity));

  private final String words;
  private final String unit;
  private final int leads;

  Quantity(String words, String unit, int leads) {
    this.words = words;
    this.unit = unit;
    this.leads = leads;
  }

  /** As trees write it: {@code AC volts}. */
  public String words() {
    return words;
  }

  public String unit() {
    return unit;
  }

  /** The number of meter points it takes; 0 if the prose says where to measure. */
  public int leads() {
    return leads;
  }

  public boolean isVolts() {
    return this == AC_VOLTS || this == AC_VOLTS_LOW_IMPEDANCE || this == DC_VOLTS;
  }

  /** Whether it is measured without leads in a circuit, so that a system may state it: a temperature, a pressure. */
  public boolean isOutsideCircuit() {
    return leads == 0;
  }

  /** Whether it must be measured on a part without power. */
  public boolean needsDeadCircuit() {
    return this == OHMS || this == MICROFARADS;
  }

  public static Optional<Quantity> named(String written) {
    return Optional.ofNullable(BY_KEY.get(Names.key(written)));
  }

  public static List<String> allWords() {
    return Arrays.stream(values()).map(Quantity::words).toList();
  }

  /** The difference between two readings, such as a display's last digit, in this quantity's own unit. */
  public Optional<BigDecimal> stepInOwnUnit(BigDecimal difference, String writtenUnit) {
    return Unit.named(writtenUnit).filter(found -> found.of(unit)).map(found -> found.convertStep(difference));
  }

  /**
   * Converts a number to this quantity's unit; empty if the unit does not fit. An empty unit means this quantity's
   * unit.
   */
  public Optional<BigDecimal> inOwnUnit(BigDecimal number, String writtenUnit) {
    return writtenUnit.isEmpty() ? Optional.of(number)
        : this == TEMPERATURE_DIFFERENCE ? stepInOwnUnit(number, writtenUnit)
            : Unit.named(writtenUnit).filter(found -> found.of(unit)).map(found -> found.convert(number));
  }
}
