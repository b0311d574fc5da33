package rungbook.circuit;

/** A wired system with its samples, its logic and its two kinds of network. */
final class Plant {

  private final Wiring wiring;
  private final Sampled sampled;
  private final Logic logic;
  private final Blueprint alternating;
  private final Blueprint direct;

  Plant(Wiring wiring, Samples samples) {
    this.wiring = wiring;
    this.sampled = new Sampled(wiring, samples);
    this.logic = new Logic(wiring);
    this.alternating = new Blueprint(wiring, sampled, Current.ALTERNATING);
    this.direct = new Blueprint(wiring, sampled, Current.DIRECT);
  }

  Wiring wiring() {
    return wiring;
  }

  Sampled sampled() {
    return sampled;
  }

  Logic logic() {
    return logic;
  }

  Blueprint alternating() {
    return alternating;
  }

  Blueprint direct() {
    return direct;
  }
}
