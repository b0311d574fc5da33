package rungbook.system.logic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.SystemVariants;

/**
 * Settles a healthy system for what hands have done to it. As in docs/system-text.md, everything starts dropped out,
 * and in each round loads come on or drop out, states follow in the order of the text, and contacts move.
 */
public final class ContactLogic {

  /** Rounds until a circuit counts as one that does not settle; then the last round is taken. */
  private static final int MOST_ROUNDS = 60;

  private static final int NO_CONTACT = -1;

  @SuppressWarnings("UnnecessaryLambda") // it is a key as well
  private static final Function<SystemVariants, List<ContactLogic>> EACH = systems -> systems.all()
      .map(ContactLogic::of).toList();

  private final ControlSystem system;
  private final ContactNetwork network;
  private final List<Part.Load> loads;
  private final List<Part.State> states;
  private final List<Part.Switch> contacts;
  private final int[] contactOf;
  private final Conditions conditions;

  private ContactLogic(ControlSystem system) {
    this.system = system;
    this.network = new ContactNetwork(system);
    this.loads = system.parts(Part.Load.class).toList();
    this.states = system.parts(Part.State.class).toList();
    this.contacts = system.parts(Part.Switch.class).toList();
    this.conditions = new Conditions(loads, states, contacts);
    Map<String, Integer> numbers = new HashMap<>();
    contacts.forEach(contact -> numbers.put(contact.key(), numbers.size()));
    this.contactOf = network.conductors().stream()
        .mapToInt(limb -> limb.part() instanceof Part.Switch ? numbers.get(limb.part().key()) : NO_CONTACT).toArray();
  }

  /** The base, then each variant. */
  public static List<ContactLogic> of(SystemVariants systems) {
    return systems.once(EACH);
  }

  public static ContactLogic of(ControlSystem system) {
    return new ContactLogic(system);
  }

  /** What is on and what is live once the circuit has settled. */
  public SettledContacts settle(ControlState state) {
    Hands hands = new Hands(network, state);
    Relays now = Relays.off(loads.size(), states.size(), contacts.size());
    moveContacts(now, state);
    boolean moves = true;
    for (int round = 0; moves && round < MOST_ROUNDS; round++) {
      Relays next = next(now, hands, state);
      moves = !next.isLike(now);
      now = next;
    }
    return new SettledContacts(this, now, state, hands);
  }

  ControlSystem system() {
    return system;
  }

  ContactNetwork network() {
    return network;
  }

  List<Part.Load> loads() {
    return loads;
  }

  /** The voltages while every contact stays where it is. */
  Potentials potentials(Relays relays, Hands hands) {
    Potentials potentials = new Potentials(network.points());
    for (int i = 0; i < contactOf.length; i++) {
      ContactNetwork.Limb limb = network.conductors().get(i);
      if (hands.conducts(limb, contactOf[i] == NO_CONTACT || relays.closed[contactOf[i]])) {
        potentials.join(limb.a(), limb.b());
      }
    }
    List<ContactNetwork.Source> connected = new ArrayList<>();
    for (ContactNetwork.Source source : network.sources()) {
      if (hands.isConnected(source)) {
        connected.add(source);
      }
    }
    potentials.drive(connected);
    return potentials;
  }

  /** The least voltage across the limbs of a load. */
  double volts(int load, Potentials potentials, Hands hands) {
    double least = Double.MAX_VALUE;
    for (ContactNetwork.Limb limb : network.loads().get(load)) {
      least = hands.isConnected(limb) ? Math.min(least, potentials.between(limb.a(), limb.b())) : 0;
    }
    return least < Double.MAX_VALUE ? least : 0;
  }

  private Relays next(Relays now, Hands hands, ControlState state) {
    Potentials potentials = potentials(now, hands);
    Relays next = now.copy();
    for (int i = 0; i < loads.size(); i++) {
      double volts = volts(i, potentials, hands);
      next.fed[i] = volts > 0;
      next.on[i] = volts >= loads.get(i).onVolts().middle()
          && conditions.holds(loads.get(i).onlyWhen(), now, state);
    }
    for (int i = 0; i < states.size(); i++) {
      moveState(i, next, state);
    }
    moveContacts(next, state);
    return next;
  }

  private void moveState(int i, Relays next, ControlState state) {
    Part.State moved = states.get(i);
    boolean set = conditions.holds(moved.set(), next, state);
    if (moved.reset().isEmpty()) {
      next.states[i] = set;
      return;
    }
    next.rounds[i] = set ? Math.min(moved.after(), next.rounds[i] + 1) : 0;
    boolean reset = conditions.holds(moved.reset().get(), next, state);
    next.states[i] = !reset && (next.states[i] || next.rounds[i] >= moved.after());
  }

  private void moveContacts(Relays next, ControlState state) {
    for (int i = 0; i < contacts.size(); i++) {
      next.closed[i] = conditions.holds(contacts.get(i).closedWhen(), next, state);
    }
  }
}
