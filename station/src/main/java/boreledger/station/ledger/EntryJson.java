package boreledger.station.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;

/** Entry bodies as JSON text and back. */
final class EntryJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .build();

  private EntryJson() {}

  static String write(EntryBody body) {
    try {
      return MAPPER.writerFor(EntryBody.class).writeValueAsString(body);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an entry body is made of plain values", e);
    }
  }

  static EntryBody read(long seq, String text) throws LedgerFault {
    try {
      return MAPPER.readValue(text, EntryBody.class);
    } catch (JsonProcessingException e) {
      throw new LedgerFault(
          "entry " + seq + " of the ledger is not readable: " + e.getOriginalMessage(), e);
    }
  }
}
