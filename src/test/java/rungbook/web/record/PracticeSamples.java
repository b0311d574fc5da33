package rungbook.web.record;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;

/** Results as a practice page wrote them, in {@code src/test/resources/rungbook/record}, and their schema. */
public final class PracticeSamples {

  public static final String FULL = RecordSamples.read("practice.json");

  /** The same as it is in QR pictures. */
  public static final String SHORT = RecordSamples.read("practice-short.json");

  private PracticeSamples() {}

  static Schema schema() throws IOException {
    try (InputStream published = PracticeSamples.class
        .getResourceAsStream("/META-INF/resources/schema/practice-results.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(published,
          InputFormat.JSON);
    }
  }
}
