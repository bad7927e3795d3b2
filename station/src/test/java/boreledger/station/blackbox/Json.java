package boreledger.station.blackbox;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Strict reading of JSON: one document, no NaN, no key twice, numbers with all their digits. */
final class Json {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private Json() {}

  static JsonNode only(String text, Object whence) {
    try {
      JsonNode tree = MAPPER.readTree(text);
      if (tree.isMissingNode()) {
        throw new AssertionError("no JSON at all: " + whence);
      }
      return tree;
    } catch (JsonProcessingException e) {
      throw new AssertionError("not one JSON document (" + e.getMessage() + "): " + whence, e);
    }
  }

  static JsonNode file(Path file) {
    try {
      return only(Files.readString(file), file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The element of a list whose key has this value, or an assertion error. */
  static JsonNode among(JsonNode list, String key, Object value) {
    for (JsonNode element : list) {
      JsonNode found = element.path(key);
      boolean same =
          value instanceof Number number
              ? found.isNumber() && Math.abs(found.doubleValue() - number.doubleValue()) < 1e-9
              : found.asText().equals(value);
      if (same) {
        return element;
      }
    }
    throw new AssertionError("no element with " + key + " " + value + " in " + list);
  }

  /** The bore position of this depth and axis, or an assertion error. */
  static JsonNode position(JsonNode positions, double depthMm, String axis) {
    for (JsonNode position : positions) {
      if (position.path("axis").asText().equals(axis)
          && Math.abs(position.path("depth_mm").asDouble() - depthMm) < 1e-9) {
        return position;
      }
    }
    throw new AssertionError("no answer for " + depthMm + " mm, " + axis + " in " + positions);
  }
}
