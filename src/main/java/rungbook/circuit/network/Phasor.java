package rungbook.circuit.network;

/** A complex number: a voltage or current (rms), an impedance or an admittance. */
public record Phasor(double re, double im) {

  public static final Phasor ZERO = new Phasor(0, 0);
  public static final Phasor ONE = new Phasor(1, 0);

  public static Phasor of(double re) {
    return new Phasor(re, 0);
  }

  public static Phasor polar(double magnitude, double degrees) {
    double radians = Math.toRadians(degrees);
    return new Phasor(magnitude * Math.cos(radians), magnitude * Math.sin(radians));
  }

  public Phasor plus(Phasor other) {
    return new Phasor(re + other.re, im + other.im);
  }

  public Phasor minus(Phasor other) {
    return new Phasor(re - other.re, im - other.im);
  }

  public Phasor times(Phasor other) {
    return new Phasor(re * other.re - im * other.im, re * other.im + im * other.re);
  }

  public Phasor times(double factor) {
    return new Phasor(re * factor, im * factor);
  }

  public Phasor over(Phasor other) {
    double square = other.re * other.re + other.im * other.im;
    return new Phasor(
        (re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
  }

  /** 1 / this: converts an impedance to an admittance and back. */
  public Phasor inverse() {
    return ONE.over(this);
  }

  public double magnitude() {
    return Math.hypot(re, im);
  }

  public double degrees() {
    return Math.toDegrees(Math.atan2(im, re));
  }
}
