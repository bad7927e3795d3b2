package boreledger.station.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;

/** Entry bodies as JSON text and back. Reading refuses unknown and repeated keys. */
final class EntryJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  /** The keys under which a body names other entries. */
  private static final List<String> REFERENCES = List.of("session", "setting", "entry");

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

  /**
   * Reads a body as whoever checks the ledger does: only the text that {@link #write} makes of it
   * is accepted, save for keys that came later and stand for null.
   */
  static EntryBody readStrictly(long seq, String text) throws LedgerFault {
    EntryBody body = read(seq, text);
    try {
      JsonNode stored = MAPPER.readTree(text);
      JsonNode written = MAPPER.readTree(write(body));
      for (Map.Entry<String, JsonNode> field : written.properties()) {
        boolean later = !stored.has(field.getKey()) && field.getValue().isNull();
        if (!later && !field.getValue().equals(stored.get(field.getKey()))) {
          throw new LedgerFault(
              "entry " + seq + " does not say " + field.getKey() + " as this program writes it");
        }
      }
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what was read once can be read again", e);
    }
    return body;
  }

  /**
   * Reads a body whose references to other entries are given other numbers. A seal's stays: it is
   * signed.
   *
   * @param number the new number for an old one
   */
  static EntryBody readRenumbered(long seq, String text, LongUnaryOperator number)
      throws LedgerFault {
    try {
      JsonNode body = MAPPER.readTree(text);
      if (body instanceof ObjectNode object && !object.path("kind").asText().equals("seal")) {
        for (String key : REFERENCES) {
          JsonNode old = object.path(key);
          if (old.isIntegralNumber()) {
            object.put(key, number.applyAsLong(old.longValue()));
          }
        }
      }
      return MAPPER.treeToValue(body, EntryBody.class);
    } catch (JsonProcessingException e) {
      throw new LedgerFault(
          "entry " + seq + " of the ledger is not readable: " + e.getOriginalMessage(), e);
    }
  }

  /** The session that a body names; null when it belongs to none. */
  static Long sessionOf(long seq, String text) throws LedgerFault {
    try {
      JsonNode session = MAPPER.readTree(text).path("session");
      return session.isIntegralNumber() ? session.longValue() : null;
    } catch (JsonProcessingException e) {
      throw new LedgerFault(
          "entry " + seq + " of the ledger is not readable: " + e.getOriginalMessage(), e);
    }
  }
}
