package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GaugeLearnTest {
  private static final String HEADER =
      "{\"format\":\"boreledger-capture/1\",\"gauge\":\"nowhere.gauge.toml\",\"measure\":\"bore\","
          + "\"started\":\"2031-05-06T08:00:00Z\"}\n";

  @TempDir Path folder;
  private BenchFolder bench;
  private Path out;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
    out = folder.resolve("new.gauge.toml");
  }

  private Path capture(List<String> hexFrames) {
    StringBuilder lines = new StringBuilder(HEADER);
    for (int i = 0; i < hexFrames.size(); i++) {
      lines.append("{\"t\":" + (i + 1) + ".5,\"rx\":\"" + hexFrames.get(i) + "\"}\n");
    }
    return bench.write("shown.capture.jsonl", lines.toString());
  }

  private Path texts(String... frames) {
    HexFormat hex = HexFormat.of();
    return capture(
        List.of(frames).stream()
            .map(frame -> hex.formatHex(frame.getBytes(StandardCharsets.US_ASCII)))
            .toList());
  }

  private Ran learn(Path capture, String shows) {
    return Ran.command(
        "gauge", "learn", "--capture", capture, "--shows", shows, "--out", out, "--json");
  }

  @Test
  void aTextGaugeIsLearnedAndItsProfileUnderstandsTheCapture() {
    Path capture = texts("X +0.000\r\n", "X +1.000\r\n", "X +5.000\r\n");

    JsonNode answer = learn(capture, "0.000,1.000,5.000").json();

    assertTrue(answer.get("certain").asBoolean(), answer::toString);
    assertEquals(out.toString(), answer.get("profile").asText());
    assertEquals(1, answer.get("candidates").size());
    Ran check = Ran.command("gauge", "check", "--gauge", out, "--capture", capture, "--json");
    assertEquals(5.0, check.json().get("samples").get(2).get("value_mm").asDouble());
  }

  @Test
  void aNumberInBytesAsksForANegativeValueFirst() {
    Path capture = capture(List.of("aa00000d", "aa03e80d", "aa13880d"));

    Ran unsure = learn(capture, "0.000,1.000,5.000");

    assertEquals(1, unsure.status());
    JsonNode answer = unsure.json();
    assertFalse(answer.get("certain").asBoolean());
    assertTrue(answer.get("profile").isNull());
    assertEquals(1, answer.get("candidates").size());
    assertEquals(-2.345, answer.get("show_next_mm").asDouble());
    assertTrue(answer.get("why").asText().contains("no negative value"), answer::toString);
    assertFalse(Files.exists(out));
  }

  @Test
  void withANegativeValueItIsCertain() {
    Path capture = capture(List.of("aa00000d", "aa03e80d", "aa13880d", "aaf6d70d"));

    assertTrue(learn(capture, "0,1.000,5.000,-2.345").json().get("certain").asBoolean());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.000", "0.000,0.000", "1.000,-1.000"})
  void valuesOfOneMagnitudeTellTooLittle(String shows) {
    String[] frames =
        List.of(shows.split(",")).stream().map(v -> "X " + v + "\r\n").toArray(String[]::new);

    Ran unsure = learn(texts(frames), shows);

    assertEquals(1, unsure.status());
    assertFalse(unsure.json().get("certain").asBoolean());
  }

  @Test
  void inchesShownAreInchesLearned() {
    Path capture = texts("0.0000\r", "0.1000\r", "-0.2500\r");
    Ran ran =
        Ran.command(
            "gauge",
            "learn",
            "--capture",
            capture,
            "--shows",
            "0,0.1000,-0.2500",
            "--unit",
            "in",
            "--out",
            out,
            "--json");

    assertTrue(ran.json().get("certain").asBoolean(), ran::toString);
    Ran check = Ran.command("gauge", "check", "--gauge", out, "--capture", capture, "--json");
    assertEquals(-6.35, check.json().get("samples").get(2).get("value_mm").asDouble());
  }

  @Test
  void aFileThatIsThereIsLeftAlone() throws IOException {
    Files.writeString(out, "mine");

    Ran refused = learn(texts("+0.000\r\n", "+1.000\r\n"), "0.000,1.000").refused(2);

    assertTrue(refused.err().contains("there is such a file already"), refused::toString);
    assertEquals("mine", Files.readString(out));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "zero", "0.000,,1", "1e3", "1.000mm2"})
  void whatIsNoListOfValuesIsRefused(String shows) {
    Ran refused = learn(texts("+0.000\r\n"), shows).refused(2);

    assertTrue(refused.err().contains("--shows"), refused::toString);
  }

  @Test
  void captureAndPortTogetherAreRefused() {
    Ran.command("gauge", "learn", "--capture", "a", "--port", "b", "--shows", "0", "--out", out)
        .refused(2);
    Ran.command("gauge", "learn", "--shows", "0", "--out", out).refused(2);
  }

  @Test
  void theWordsNameWhatToShowNext() {
    Path capture = capture(List.of("aa00000d", "aa03e80d", "aa13880d"));

    Ran unsure =
        Ran.command("gauge", "learn", "--capture", capture, "--shows", "0,1,5", "--out", out);

    assertTrue(unsure.out().contains("Show next: a negative value"), unsure::toString);
  }
}
