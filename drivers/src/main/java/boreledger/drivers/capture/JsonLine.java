package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.OneLine;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.Set;

/** One line of a capture file: a JSON object that remembers which keys it was asked for. */
final class JsonLine {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final String file;
  private final int number;
  private final JsonNode content;
  private final Set<String> known = new LinkedHashSet<>(Set.of("comment"));

  private JsonLine(String file, int number, JsonNode content) {
    this.file = file;
    this.number = number;
    this.content = content;
  }

  /**
   * @param number the line's number, from 1
   * @param cut whether the file ends in this line without a line end
   */
  static JsonLine parse(String file, int number, String text, boolean cut) throws FileProblem {
    try {
      JsonNode content = JSON.readTree(text);
      if (content.isObject()) {
        return new JsonLine(file, number, content);
      }
    } catch (JsonProcessingException e) {
      String what = "not JSON: " + OneLine.of(e.getOriginalMessage().replaceFirst("(?s): .*", ""));
      throw FileProblem.at(file, number, what + (cut ? "; the file is cut off here" : ""));
    }
    String found = text.isBlank() ? "an empty line" : OneLine.of(text);
    throw FileProblem.at(file, number, found + ", expected a JSON object");
  }

  /** Whether the key is there; null counts as a value, of no type. */
  boolean has(String key) {
    known.add(key);
    return content.has(key);
  }

  String string(String key) throws FileProblem {
    JsonNode value = required(key);
    if (!value.isTextual()) {
      throw expected(key, "a text");
    }
    return value.textValue();
  }

  /** The finite number. */
  double number(String key) throws FileProblem {
    JsonNode value = required(key);
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      throw expected(key, "a number");
    }
    return value.doubleValue();
  }

  /**
   * Checks that no other keys are there.
   *
   * @throws FileProblem at the first that was not asked for
   */
  void done() throws FileProblem {
    Iterator<String> keys = content.fieldNames();
    while (keys.hasNext()) {
      String key = keys.next();
      if (!known.contains(key)) {
        String names = String.join(", ", known);
        throw problem("unknown key " + OneLine.of(key) + ", expected one of " + names);
      }
    }
  }

  FileProblem expected(String key, String what) {
    String found = OneLine.of(content.get(key).toString());
    return problem(key + " is " + found + ", expected " + what);
  }

  FileProblem problem(String what) {
    return FileProblem.at(file, number, what);
  }

  private JsonNode required(String key) throws FileProblem {
    if (!has(key)) {
      throw problem("missing " + key + ", which is required");
    }
    return content.get(key);
  }
}
