package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import boreledger.station.session.SmallGauge;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswersTest {
  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
  }

  @Test
  void aReplayAnswersWithOneDocumentAndTellsItsWayOnStandardError() {
    Ran replayed = replay(BenchFolder.BORES, "--json").ended(0);

    JsonNode answer = replayed.json();
    assertEquals("Small engine", answer.path("job").asText());
    assertEquals(64, answer.path("ledger_head").asText().length());
    assertTrue(replayed.err().contains("taken 6 of 6: setting ring, closing check"));
    assertTrue(replayed.err().contains("done: every position has its reading"));
  }

  @Test
  void resultsAnswerWithTheDocumentOfTheReplay() {
    JsonNode replayed = replay(BenchFolder.BORES, "--json").json();

    JsonNode results = Ran.command("results", "--ledger", bench.ledger(), "--json").json();

    assertEquals(replayed, results);
  }

  @Test
  void anUnfinishedSessionHasNullsAndNoNumbersThatAreNone() {
    JsonNode answer = replay(List.of("+0.000", "+0.028"), "--json").json();

    JsonNode positions = answer.at("/cylinders/0/bore/positions");
    assertEquals(96.030, positions.path(0).path("diameter_mm").asDouble(), 1e-9);
    assertTrue(positions.path(1).path("diameter_mm").isNull());
    assertTrue(answer.at("/cylinders/0/bore/taper_mm/thrust").isNull());
    assertTrue(answer.at("/cylinders/0/rings/0/gaps/0/measured_mm").isNull());
    assertEquals("unknown", answer.at("/cylinders/0/rings/0/state").asText());
  }

  @Test
  void aSessionWithoutAnyReadingStillAnswers() {
    replay(List.of(), "--json").ended(0).json();
    assertFalse(replay(List.of()).ended(0).out().isBlank());
  }

  @Test
  void withoutJsonTheAnswerIsInWords() {
    Ran words = replay(BenchFolder.BORES).ended(0);

    assertTrue(words.out().startsWith("Small engine"), words::toString);
    assertTrue(words.out().contains("96.0300"), words::toString);
    assertFalse(words.out().contains("NaN"), words::toString);
  }

  @Test
  void aFrameThatGaveNoReadingAsksForAttention() {
    Ran replayed = replay(List.of("+0.000", "rust"), "--json").ended(1);

    assertEquals(1, replayed.json().path("refused").asInt());
    assertTrue(replayed.err().contains("refused: "), replayed::toString);
  }

  @Test
  void aLimitThatIsNotKeptAsksForAttention() {
    // 96.002 + 0.098 = 96.100 mm, above bore_max_mm = 96.050 by far more than its uncertainty.
    replay(List.of("+0.000", "+0.098", "+0.022", "+0.010", "+0.006", "+0.000"), "--json").ended(1);
  }

  @Test
  void aGaugeCheckAnswersFrameByFrame() {
    Path gauge = bench.gauge(SmallGauge.deviation());
    Path capture = bench.bores(List.of("+0.012", "rust"));

    Ran check =
        Ran.command("gauge", "check", "--gauge", gauge, "--capture", capture, "--json").ended(1);

    JsonNode answer = check.json();
    assertEquals(2, answer.path("frames").asInt());
    assertEquals(10.0, answer.at("/samples/0/t").asDouble());
    assertEquals(0.012, answer.at("/samples/0/value_mm").asDouble());
    assertEquals("727573740a", answer.at("/rejected/0/raw").asText());
    assertEquals(20.0, answer.at("/rejected/0/t").asDouble());
    assertFalse(answer.at("/rejected/0/why").asText().isBlank());
    assertEquals("", check.err());
  }

  @Test
  void aGaugeCheckWithoutAnyRejectionIsDone() {
    Path gauge = bench.gauge(SmallGauge.deviation());
    Path capture = bench.bores(List.of("+0.012"));

    Ran check = Ran.command("gauge", "check", "--gauge", gauge, "--capture", capture).ended(0);

    assertTrue(check.out().contains("+0.012000 mm"), check::toString);
    assertTrue(check.out().contains("1 frames: 1 samples, 0 rejected"), check::toString);
  }

  @Test
  void portsAnswerWithOneDocumentEvenWhenThereAreNone() {
    assertTrue(Ran.command("ports", "--json").ended(0).json().path("ports").isArray());
    assertFalse(Ran.command("ports").ended(0).out().isBlank());
  }

  @Test
  void everyAnswerIsTheSameInEveryLocale() {
    Ran plain = results(Locale.ROOT);
    Ran german = results(Locale.GERMANY);

    assertEquals(withoutHashes(plain.out()), withoutHashes(german.out()));
    assertEquals(plain.err(), german.err());
  }

  private Ran results(Locale locale) {
    Path ledger = folder.resolve(locale.toLanguageTag() + ".db");
    Locale before = Locale.getDefault();
    Locale.setDefault(locale);
    try {
      return Ran.command(
          "replay",
          "--job",
          bench.job(),
          "--capture",
          bench.bores(BenchFolder.BORES),
          "--ledger",
          ledger);
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String withoutHashes(String out) {
    return out.replaceAll("[0-9a-f]{64}", "");
  }

  private Ran replay(List<String> lines, Object... more) {
    Object[] args = {
      "replay", "--job", bench.job(), "--capture", bench.bores(lines), "--ledger", bench.ledger()
    };
    Object[] all = Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return Ran.command(all);
  }
}
