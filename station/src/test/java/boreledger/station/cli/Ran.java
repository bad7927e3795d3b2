package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a command did, run inside this program.
 *
 * @param status its exit status
 * @param out what went to standard output
 * @param err what went to standard error
 */
record Ran(int status, String out, String err) {
  private static final ObjectMapper ONE_DOCUMENT =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  /** Runs a command; each argument is one word, paths included. */
  static Ran command(Object... args) {
    StringWriter out = new StringWriter();
    return command(new PrintWriter(out), out, args);
  }

  /** Runs a command whose standard output is something else than a text. */
  static Ran command(PrintWriter printer, StringWriter out, Object... args) {
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    StringWriter err = new StringWriter();
    int status = Boreledger.run(words, printer, new PrintWriter(err));
    return new Ran(status, out.toString(), err.toString());
  }

  /** Makes sure of the exit status. */
  Ran ended(int expected) {
    assertEquals(expected, status, this::toString);
    return this;
  }

  /** Makes sure of the exit status, of a single line on standard error and of nothing else. */
  Ran refused(int expected) {
    ended(expected);
    assertEquals("", out, this::toString);
    assertEquals(1, err.lines().count(), this::toString);
    assertFalse(err.isBlank(), this::toString);
    assertFalse(err.contains("Exception"), this::toString);
    assertFalse(err.contains("boreledger.calc"), this::toString);
    return this;
  }

  /** Standard output as exactly one JSON document in which every number is one. */
  JsonNode json() {
    assertFalse(out.contains("NaN") || out.contains("Infinity"), this::toString);
    try {
      return ONE_DOCUMENT.readTree(out);
    } catch (JsonProcessingException e) {
      return fail("no single JSON document: " + this, e);
    }
  }
}
