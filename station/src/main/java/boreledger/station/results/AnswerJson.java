package boreledger.station.results;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * Answers as JSON: records by their components' names in snake case, numbers unrounded, null for
 * what is not known.
 */
public final class AnswerJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enable(SerializationFeature.INDENT_OUTPUT)
          .build();

  private AnswerJson() {}

  /** One JSON document. */
  public static String write(Object answer) {
    try {
      return MAPPER.writeValueAsString(answer);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an answer is made of plain values", e);
    }
  }
}
