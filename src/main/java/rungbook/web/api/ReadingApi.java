package rungbook.web.api;

import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.library.solving.SystemReadings.Outcome;
import rungbook.proof.demand.ReadingRequest;
import rungbook.report.demand.ReadingJson;
import rungbook.source.Problem;
import rungbook.source.Wording;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CircuitService;
import rungbook.web.service.CompiledLibrary;

/** A reading on demand: what a meter shows between two points of a system, and what runs. */
@Path("/api/reading")
@Tag(name = "reading", description = "What a meter shows between two points of a system as saved, and what runs")
@Produces(MediaType.APPLICATION_JSON)
class ReadingApi {
  private final CompiledLibrary library;
  private final CircuitService circuits;

  ReadingApi(CompiledLibrary library, CircuitService circuits) {
    this.library = library;
    this.circuits = circuits;
  }

  @GET
  @Operation(summary = "A reading between two points of a system, and what runs",
      description = "The same fields as `rungbook read --format json`. Answers 400 for a name that the system does not "
          + "have, with the parameter in `field` and the nearest name in `nearest`, and 422 for a system whose circuit "
          + "cannot be solved")
  public String read(
      @Parameter(description = "a system's name",
          example = "split-cooling-gas-furnace") @QueryParam("system") @DefaultValue("") String system,
      @Parameter(description = "the place of the leads",
          example = "condenser") @QueryParam("at") @DefaultValue("") String at,
      @Parameter(description = "the points of the leads, red first; one point for a clamp; none to see only what runs",
          example = "Y, C") @QueryParam("leads") @DefaultValue("") String leads,
      @Parameter(description = "a control and its position; may come several times",
          example = "thermostat cooling") @QueryParam("set") List<String> set,
      @Parameter(description = "one of the system's faults") @QueryParam("fault") @DefaultValue("") String fault,
      @Parameter(description = "one of the system's variants") @QueryParam("variant") @DefaultValue("") String variant,
      @Parameter(description = "what the meter measures; else AC volts") //
      @QueryParam("quantity") @DefaultValue("") String quantity,
      @Parameter(description = "a meter of the library; else the usual one") //
      @QueryParam("meter") @DefaultValue("") String meter) {
    if (system.isBlank()) {
      throw ProblemException.badRequest("it is not said which system is meant", "send its name as `system`");
    }
    var request = new ReadingRequest(variant, at, leads, set, fault, quantity);
    return json(circuits.answer(system.strip(), meter, request, library.current()));
  }

  static String json(Outcome outcome) {
    if (outcome instanceof Outcome.Refused refused) {
      throw refused(refused.problems());
    }
    if (outcome instanceof Outcome.Unsolvable unsolvable) {
      throw ProblemException.of(422, "This system has no circuit to read", unsolvable.why(),
          "correct what `check` reports in the system, or give it `parts`");
    }
    return ReadingJson.of(((Outcome.Answered) outcome).answer());
  }

  /** The first problem is the answer's own; all of them are in a list. */
  private static ProblemException refused(List<Problem> problems) {
    var first = problems.get(0);
    var wording = Wording.of(first);
    return ProblemException.badRequest(wording.sentence(first), wording.hint(first))
        .with(Map.of("field", first.source().name(), "nearest", nearest(first), "problems",
            problems.stream().map(ReadingApi::view).toList()));
  }

  private static Map<String, String> view(Problem problem) {
    var wording = Wording.of(problem);
    return Map.of("code", problem.code().name(), "field", problem.source().name(), "says", wording.sentence(problem),
        "hint", wording.hint(problem), "nearest", nearest(problem));
  }

  /** Empty if no known name is like the one that was written. */
  private static String nearest(Problem problem) {
    return problem.facts().getOrDefault("near", "");
  }
}
