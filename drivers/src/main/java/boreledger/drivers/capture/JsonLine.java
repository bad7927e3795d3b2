package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.OneLine;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;

/** One line of a capture file: a JSON object, read strictly. */
final class JsonLine {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final String file;
  private final int number;
  private final JsonNode object;

  JsonLine(String file, int number, String text) throws FileProblem {
    this.file = file;
    this.number = number;
    this.object = parse(text);
  }

  /** Refuses keys that are not among the known ones; {@code comment} is always known. */
  void onlyKeys(Collection<String> known) throws FileProblem {
    for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!known.contains(name) && !name.equals("comment")) {
        throw problem(
            "unknown key " + OneLine.of(name) + ", expected one of " + String.join(", ", known));
      }
    }
  }

  boolean has(String key) {
    return object.has(key);
  }

  String text(String key) throws FileProblem {
    JsonNode value = required(key);
    if (!value.isTextual() || value.textValue().isBlank()) {
      throw expected(key, "a text");
    }
    return value.textValue();
  }

  String textOrEmpty(String key) throws FileProblem {
    if (!required(key).isTextual()) {
      throw expected(key, "a text");
    }
    return required(key).textValue();
  }

  double number(String key) throws FileProblem {
    JsonNode value = required(key);
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      throw expected(key, "a number");
    }
    return value.doubleValue();
  }

  <T> T oneOf(String key, List<T> choices, Function<T, String> word) throws FileProblem {
    String text = text(key);
    for (T choice : choices) {
      if (word.apply(choice).equals(text)) {
        return choice;
      }
    }
    throw expected(key, "one of " + String.join(", ", choices.stream().map(word).toList()));
  }

  FileProblem expected(String key, String what) {
    return problem(key + " is " + OneLine.of(object.get(key).toString()) + ", expected " + what);
  }

  FileProblem problem(String what) {
    return FileProblem.at(file, number, what);
  }

  private JsonNode required(String key) throws FileProblem {
    if (!object.has(key)) {
      throw problem("missing " + key + ", which is required");
    }
    return object.get(key);
  }

  private JsonNode parse(String text) throws FileProblem {
    JsonNode node;
    try {
      node = MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw problem(
          "not JSON: " + OneLine.of(e.getOriginalMessage()) + "; is the file cut off here?");
    }
    if (node == null || !node.isObject()) {
      throw problem("not a JSON object: " + OneLine.of(text));
    }
    return node;
  }
}
