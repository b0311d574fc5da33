package rungbook.web.http;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;

/** Makes JSON strict: no text as a number, no fraction as an integer, nothing after the end. */
@Singleton
class JsonSettings implements ObjectMapperCustomizer {
  @Override
  @SuppressWarnings("deprecation") // the mapper is built by the framework, so its builder cannot be used
  public void customize(ObjectMapper mapper) {
    mapper.configure(MapperFeature.ALLOW_COERCION_OF_SCALARS, false);
    mapper.disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT);
    mapper.enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
  }
}
