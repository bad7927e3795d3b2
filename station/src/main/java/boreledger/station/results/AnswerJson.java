package boreledger.station.results;

import boreledger.station.wording.Statement;
import boreledger.station.wording.Wording;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;

/**
 * Answers as JSON: records by their components' names in snake case, numbers unrounded, null for
 * what is not known.
 */
public final class AnswerJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enable(SerializationFeature.INDENT_OUTPUT)
          .addModule(new SimpleModule().addSerializer(Statement.class, new InWords()))
          .build();

  private AnswerJson() {}

  /** Scripts get sentences as people at a terminal do. */
  private static final class InWords extends JsonSerializer<Statement> {
    @Override
    public void serialize(Statement statement, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writeString(Wording.PLAIN.of(statement));
    }
  }

  /** One JSON document. */
  public static String write(Object answer) {
    try {
      return MAPPER.writeValueAsString(answer);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an answer is made of plain values", e);
    }
  }
}
