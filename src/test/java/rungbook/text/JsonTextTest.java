package rungbook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Read again with Jackson. */
class JsonTextTest {

  private static final ObjectMapper JACKSON = new ObjectMapper();

  @ParameterizedTest
  @ValueSource(strings = {"", "R to C", "\"\\", "</template><script>&amp;", "a\nb\tc\u0000", "5 Ω “so”",
      "\u2028\ud83d\ude00"})
  void aStringComesBackAndClosesNoTag(String text) throws IOException {
    String json = JsonText.string(text);
    assertEquals(text, JACKSON.readValue(json, String.class));
    assertFalse(json.contains("<") || json.contains("&"), json);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1e15, 3.5, 0.1, 1e-300, -2.5e20, 1.0 / 3})
  void aNumberComesBackToTheLastBit(double number) throws IOException {
    assertEquals(number, JACKSON.readValue(JsonText.number(number), Double.class));
  }

  @Test
  void arraysAndObjectsHoldJson() throws IOException {
    assertEquals(Map.of("a", List.of(1, "b")),
        JACKSON.readValue(JsonText.object(Map.of("a", JsonText.array(List.of(1, JsonText.string("b"))))), Map.class));
  }
}
