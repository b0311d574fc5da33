package rungbook.pack;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The schema that the server publishes. */
final class RecordSchema {

  private RecordSchema() {}

  static List<Error> faults(String record) {
    try (InputStream published = RecordSchema.class
        .getResourceAsStream("/META-INF/resources/schema/field-record.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(published, InputFormat.JSON).validate(record, InputFormat.JSON);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
