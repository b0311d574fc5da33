package rungbook.proof.demand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.sequence.HoldingCircuits;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.Variant;
import rungbook.system.Vocabulary;
import rungbook.system.quantity.QuantityReader;
import rungbook.tree.Meter;
import rungbook.tree.reader.StepReader;
import rungbook.tree.reader.SystemNames;
import rungbook.tree.reader.TreeReader;

/**
 * Looks up the names of a request. Its problems are those of a tree with the same words, at the place of the words in
 * the option or field that they are written in.
 */
public final class RequestReader {

  // the rules that declare these two are in a room that this one may not know
  private final Code pointElsewhere = Code.of("point-elsewhere");
  private final Code placeMissing = Code.of("place-missing");
  private final ReadingRequest request;
  private final ControlSystem system;
  private final String variant;
  private final List<Problem> problems;

  private RequestReader(ReadingRequest request, ControlSystem system, String variant, List<Problem> problems) {
    this.request = request;
    this.system = system;
    this.variant = variant;
    this.problems = problems;
  }

  /** @param question empty if there are problems */
  public record Read(Optional<ReadingQuestion> question, List<Problem> problems) {}

  /** @param systems a system that was read without problems */
  public static Read read(ReadingRequest request, SystemVariants systems, Meter meter) {
    var problems = new ArrayList<Problem>();
    Optional<Variant> variant = new RequestReader(request, systems.base(), "", problems).variant(systems.variants());
    ControlSystem system = variant.map(Variant::system).orElse(systems.base());
    ReadingQuestion question = new RequestReader(request, system, variant.map(Variant::name).orElse(""), problems)
        .question(meter);
    return new Read(problems.isEmpty() ? Optional.of(question) : Optional.empty(), List.copyOf(problems));
  }

  private Optional<Variant> variant(List<Variant> variants) {
    Optional<String> written = request.written(request.variant());
    Optional<Variant> found = written.flatMap(
        name -> variants.stream().filter(one -> one.key().equals(Names.key(name))).findFirst());
    if (written.isPresent() && found.isEmpty()) {
      problems.add(unknown(TreeReader.UNKNOWN_VARIANT, "variant", written.get(), written.get(),
          variants.stream().map(Variant::name).toList()));
    }
    return found;
  }

  private ReadingQuestion question(Meter meter) {
    Optional<Vocabulary.StatedQuantity> stated = request.written(request.quantity())
        .flatMap(name -> Optional.ofNullable(system.vocabulary().quantities().get(Names.key(name))));
    Quantity quantity = stated.map(Vocabulary.StatedQuantity::kind).orElseGet(this::quantity);
    List<Terminal> leads = stated.isPresent() ? List.of() : leads();
    inspect(leads, quantity);
    List<Setting> set = settings();
    boolean remembers = HoldingCircuits.anyIn(CircuitNetwork.of(system));
    CircuitState state = CircuitState.start(system.vocabulary());
    for (Setting one : set) {
      CircuitState to = one.choice().set(one.position(), state);
      state = remembers ? to.afterDelays(state, one.choice().renewed(one.position())) : to;
    }
    return new ReadingQuestion(system, variant, leads, quantity,
        stated.map(Vocabulary.StatedQuantity::name), meter, state,
        remembers ? set.stream().map(Setting::words).toList() : changed(set), fault());
  }

  private record Setting(ControlChoice choice, String position) {

    String words() {
      return choice.at(position);
    }
  }

  /** What differs from the start. */
  private List<String> changed(List<Setting> set) {
    Map<ControlChoice, String> last = new HashMap<>();
    set.forEach(one -> last.put(one.choice(), one.position()));
    return ControlChoice.of(system.vocabulary()).stream()
        .flatMap(choice -> Optional.ofNullable(last.get(choice))
            .filter(position -> !position.equals(choice.positions().get(0))).map(choice::at).stream())
        .toList();
  }

  private Quantity quantity() {
    Optional<String> written = request.written(request.quantity());
    Optional<Quantity> found = written.flatMap(Quantity::named);
    if (written.isPresent() && found.isEmpty()) {
      problems.add(unknown(QuantityReader.UNKNOWN_QUANTITY, "quantity", written.get(), written.get(),
          SystemNames.measurable(Optional.of(system.vocabulary()))).with("quantity", written.get()));
    }
    return found.orElse(Quantity.AC_VOLTS);
  }

  private Optional<Fault> fault() {
    Optional<String> written = request.written(request.fault());
    Optional<Fault> found = written.flatMap(name -> system.faults().stream()
        .filter(fault -> fault.key().equals(Names.key(name))).findFirst());
    if (written.isPresent() && found.isEmpty()) {
      problems.add(unknown(SystemNames.UNKNOWN_FAULT, "fault", written.get(), written.get(),
          system.faults().stream().map(Fault::name).toList()));
    }
    return found;
  }

  private List<Terminal> leads() {
    Optional<String> at = place(request.at(), request.at(), "at");
    return request.leadNames().stream().flatMap(lead -> terminal(lead, at).stream()).toList();
  }

  private void inspect(List<Terminal> leads, Quantity quantity) {
    int found = request.leadNames().size();
    int needed = quantity.leads();
    if (found > 0 && needed > 0 && found != needed) {
      problems.add(problem(StepReader.LEADS_COUNT, "leads", request.leads(), request.leads())
          .with("quantity", quantity.words()).with("needed", needed).with("found", found));
    } else if (leads.size() == 2 && new HashSet<>(leads).size() == 1) {
      String second = request.leadNames().get(1);
      problems.add(problem(StepReader.LEADS_SAME, "leads", request.leads(), second).with("point", second));
    }
  }

  /** The key of a place; empty if none is written, or it is unknown, which is reported. */
  private Optional<String> place(String text, String written, String field) {
    Map<String, Vocabulary.Location> known = system.vocabulary().locations();
    if (written.isBlank() || known.containsKey(Names.key(written))) {
      return request.written(written).map(Names::key);
    }
    problems.add(unknown(SystemNames.UNKNOWN_LOCATION, field, text, written.strip(),
        known.values().stream().map(Vocabulary.Location::name).toList()));
    return Optional.empty();
  }

  private Optional<Terminal> terminal(String written, Optional<String> at) {
    Map<String, Vocabulary.Point> points = system.vocabulary().points();
    int word = points.containsKey(Names.key(written)) ? -1 : written.lastIndexOf(" at ");
    String name = word < 0 ? written : written.substring(0, word);
    Optional<String> place = word < 0 ? at : place(request.leads(), written.substring(word + 4), "leads");
    Vocabulary.Point point = points.get(Names.key(name));
    if (point == null) {
      problems.add(unknown(SystemNames.UNKNOWN_POINT, "leads", request.leads(), name.strip(),
          points.values().stream().map(Vocabulary.Point::name).toList()));
      return Optional.empty();
    }
    return terminal(point, name.strip(), place.or(() -> onlyPlace(point)));
  }

  private static Optional<String> onlyPlace(Vocabulary.Point point) {
    return point.locations().size() == 1 ? point.locations().stream().findFirst() : Optional.empty();
  }

  private Optional<Terminal> terminal(Vocabulary.Point point, String written, Optional<String> place) {
    if (place.isPresent() && point.locations().contains(place.get())) {
      return Optional.of(new Terminal(Names.key(point.name()), place.get()));
    }
    Problem problem = problem(place.isPresent() ? pointElsewhere : placeMissing, "leads", request.leads(), written)
        .with("point", point.name()).with("places", places(point));
    problems.add(place.map(where -> problem.with("place", placeName(where))).orElse(problem));
    return Optional.empty();
  }

  private String places(Vocabulary.Point point) {
    return point.locations().stream().map(this::placeName).sorted().collect(Collectors.joining(", "));
  }

  private String placeName(String key) {
    Vocabulary.Location place = system.vocabulary().locations().get(key);
    return place == null ? key : place.name();
  }

  /** In the order in which they are asked for. */
  private List<Setting> settings() {
    return request.set().stream().flatMap(written -> setting(written)
        .map(choice -> new Setting(choice, Names.key(written).substring(choice.key().length()).strip())).stream())
        .toList();
  }

  private Optional<ControlChoice> setting(String written) {
    List<ControlChoice> all = ControlChoice.of(system.vocabulary());
    String key = Names.key(written);
    Optional<ControlChoice> found = all.stream().filter(choice -> key.startsWith(choice.key() + " "))
        .max(Comparator.comparingInt(choice -> choice.key().length()));
    if (found.isEmpty()) {
      Set<String> known = all.stream().flatMap(one -> one.positions().stream().map(one::at))
          .collect(Collectors.toCollection(LinkedHashSet::new));
      problems.add(unknown(SystemNames.UNKNOWN_CONTROL, "set", written, written.strip(), known));
      return Optional.empty();
    }
    String position = key.substring(found.get().key().length()).strip();
    if (!found.get().positions().contains(position)) {
      problems.add(unknown(SystemNames.UNKNOWN_POSITION, "set", written, position, found.get().positions())
          .with("kind", found.get().name()));
      return Optional.empty();
    }
    return found;
  }

  private Problem unknown(Code code, String field, String text, String written, Collection<String> known) {
    return problem(code, field, text, written).with("name", written).with("kind", field)
        .with("system", system.vocabulary().id()).with("known", SystemNames.listed(known))
        .near(written, Nearest.to(written, known));
  }

  private static Problem problem(Code code, String field, String text, String written) {
    int start = Math.max(0, text.indexOf(written));
    int end = Math.min(text.length(), start + written.length());
    return Problem.at(code, new Source(field, text), new Span(start, end));
  }
}
