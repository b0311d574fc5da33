package rungbook.pack.drawing;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.system.ControlSystem;
import rungbook.system.NominalVolts;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** The drawings of where the leads go, for the checks of one tree. */
public final class LeadDrawings {

  private static final ControlSystem NOTHING_KNOWN = new ControlSystem(
      new Vocabulary("", "", Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of()),
      List.of(), List.of(), List.of(), List.of());

  private final Vocabulary vocabulary;
  private final NominalVolts volts;
  private final Labels labels;
  private final Subjects subjects;

  /** @param system what the tree's system says; empty if the tree names none */
  public LeadDrawings(Optional<ControlSystem> system) {
    ControlSystem known = system.orElse(NOTHING_KNOWN);
    this.vocabulary = known.vocabulary();
    this.volts = NominalVolts.of(known);
    this.labels = new Labels(vocabulary);
    this.subjects = new Subjects(known, volts, labels);
  }

  /**
   * The drawing for a check, as HTML.
   *
   * @param check with at least one lead
   * @param words where its leads go, for people who cannot see it
   */
  public String of(Step.MeterCheck check, String words) {
    List<Terminal> leads = leads(check);
    if (leads.size() == 1) {
      return ClampDrawing.of(check.leads().get(0).text(), check.quantity().words(), words);
    }
    var pieces = new ArrayList<LeadDrawing.Titled>();
    var said = new StringBuilder(words).append('.');
    for (Subject subject : touched(check)) {
      LeadDrawing.Titled piece = titled(subject, leads);
      pieces.add(piece);
      said.append(said(subject, piece));
    }
    return LeadDrawing.of(pieces, leads, check.quantity().words(), said.toString());
  }

  /** What the leads of a check touch. */
  List<Subject> touched(Step.MeterCheck check) {
    return subjects.of(leads(check));
  }

  /** The points that the leads of a check touch. */
  public List<Terminal> leads(Step.MeterCheck check) {
    return check.leads().stream().map(lead -> terminal(lead, check.at())).toList();
  }

  /** A point without a place, which is a problem of the tree, is drawn by itself. */
  private Terminal terminal(NameRef lead, Optional<NameRef> at) {
    Vocabulary.Point point = vocabulary.points().get(lead.key());
    Set<String> places = point == null ? Set.of() : point.locations();
    String only = places.size() == 1 ? places.iterator().next() : "";
    return new Terminal(point == null ? lead.text() : lead.key(), at.map(NameRef::key).orElse(only));
  }

  private static Piece body(Subject subject, TerminalMarks marks) {
    if (subject instanceof Subject.Row row) {
      return RowPiece.of(row, marks);
    }
    return subject instanceof Subject.Poles poles ? PolesPiece.of(poles, marks)
        : WireEndsPiece.of((Subject.WireEnds) subject, marks);
  }

  private LeadDrawing.Titled titled(Subject subject, List<Terminal> leads) {
    double most = leads.stream().filter(subject.terminals()::contains).mapToDouble(volts::at).max().orElse(0);
    TerminalMarks marks = new TerminalMarks(labels.of(subject), leads, volts);
    return new LeadDrawing.Titled(subject.title(), most == 0 ? "" : Math.round(most) + " V",
        most >= Vocabulary.LINE_VOLTS, body(subject, marks));
  }

  private String said(Subject subject, LeadDrawing.Titled titled) {
    String names = subject.terminals().stream().map(labels::name).collect(joining(", "));
    return titled.title().isEmpty() ? ""
        : " " + titled.title() + (titled.voltage().isEmpty() ? "" : ", " + titled.voltage()) + ": " + names + ".";
  }
}
