package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import rungbook.library.Library;
import rungbook.library.SystemReadings;
import rungbook.proof.demand.OperatingTable;
import rungbook.proof.demand.ReadingRequest;
import rungbook.source.Source;
import rungbook.system.SystemVariants;

/** The circuits of the library's systems, kept until their text changes. */
@ApplicationScoped
public class CircuitService {
  private final SystemReadings readings = new SystemReadings();

  /** Empty if its circuit cannot be solved: its problems say why. */
  public Optional<SystemVariants> system(String id, Source source) {
    return readings.system(id, source);
  }

  public Optional<OperatingTable> table(String id, Source source) {
    return readings.table(id, source);
  }

  public SystemReadings.Outcome answer(String id, String meter, ReadingRequest request, Library library) {
    return readings.answer(id, meter, request, library.text(), library.shared());
  }
}
