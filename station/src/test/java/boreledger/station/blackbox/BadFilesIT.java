package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file that cannot be used is refused whole, at its line, before a ledger is made. */
class BadFilesIT {
  private static final String JOB = "pumphouse-three.job.toml";
  private static final String GAUGE = "signed-decimal.gauge.toml";
  private static final String BORE = "bore-press.capture.jsonl";
  private static final String GAP = "gap-top.capture.jsonl";

  private final Launcher program = Launcher.quick();

  @TempDir Path folder;
  private Bundle bundle;

  @BeforeEach
  void fillTheFolder() {
    bundle = new Bundle(folder).withSamples(JOB, GAUGE, "gap-leaf.gauge.toml", BORE, GAP);
  }

  @ParameterizedTest(name = "{1} instead of {0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '#',
      value = {
        "taper_max_mm = 0.050; taper_maks_mm = 0.050",
        "cylinders = 3; cylinders = \"three\"",
        "cylinders = 3; cylinders = 0",
        "nominal_bore_mm = 96.0; nominal_bore_mm = -96.0",
        "taper_max_mm = 0.050; taper_max_mm = 97.0",
        "[12.0, 60.0, 108.0]; [12.0, 60.0, 130.0]",
        "[12.0, 60.0, 108.0]; [-1.0, 60.0, 108.0]",
        "[\"thrust\", \"pin\"]; [\"thrust\", \"thrust\"]",
        "name = \"Pumphouse three\"; name = \"Pumphouse three",
        "boreledger-job/1; boreledger-job/9",
        "size_mm = 96.002; size_mm = nan",
        "rule = \"boosted-hard\"; rule = \"no-such-rule\""
      })
  void aBadJobIsRefusedAtItsLine(String good, String bad) {
    int line = bundle.edit(JOB, good, bad);
    assertRefusedAt(JOB, line, BORE);
  }

  @Test
  void aJobWithoutANeededKeyIsRefusedByName() {
    bundle.edit(JOB, "stroke_mm = 104.0\n", "");
    String message = assertNothingMade(BORE);
    assertTrue(message.contains("stroke_mm") && message.contains(JOB), message);
  }

  @Test
  void anUnknownMaterialWithoutACoefficientIsRefused() {
    bundle.edit(JOB, "cte_per_k = 10.8e-6\n", "");
    int line = bundle.edit(JOB, "\"grey-iron\"", "\"moon-rock\"");
    assertRefusedAt(JOB, line, BORE);
  }

  @Test
  void aRingWithBothARuleAndATargetIsRefused() {
    bundle.edit(JOB, "rule = \"boosted-hard\"", "rule = \"boosted-hard\"\ntarget_mm = 0.5");
    String message = assertNothingMade(BORE);
    assertTrue(Pattern.compile(Pattern.quote(JOB) + ":\\d+").matcher(message).find(), message);
  }

  @Test
  void aDepthThatOneRingStillReachesIsTaken() {
    bundle.edit(JOB, "[12.0, 60.0, 108.0]", "[12.0, 60.0, 121.0]");
    program.run(bundle.replay(JOB, List.of(BORE))).ended(1).json();
  }

  @ParameterizedTest(name = "{1} instead of {0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '#',
      value = {
        "(?<value>[+-]?\\d+\\.\\d+); ([+-]?\\d+\\.\\d+)",
        "(?<value>[+-]?\\d+\\.\\d+); (?<value>[+-]?\\d+\\.\\d+",
        "kind = \"line\"; kind = \"knot\"",
        "rule = \"press\"; rule = \"squint\"",
        "reads = \"deviation\"; reads = \"mood\"",
        "max_bytes = 64; max_bytes = -1",
        "resolution_mm = 0.001; resolution = 0.001"
      })
  void aBadGaugeProfileIsRefusedAtItsLine(String good, String bad) {
    int line = bundle.edit(GAUGE, good, bad);
    boolean keyIsMissingToo = bad.startsWith("resolution ");
    if (keyIsMissingToo) {
      String message = assertNothingMade(BORE);
      assertTrue(message.contains(GAUGE + ":"), message);
    } else {
      assertRefusedAt(GAUGE, line, BORE);
    }
  }

  @ParameterizedTest(name = "{1} instead of {0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '#',
      value = {
        "{\"t\":54.464; {\"t\":1.5",
        "\"t\":9.753; \"t\":\"soon\"",
        "\"rx\":\"2b302e3031350d0a\"}; \"rx\":\"2b302e3031350d0\"}",
        "\"rx\":\"2b302e3031350d0a\"}; \"rx\":\"2b302e3031350d0g\"}",
        "\"rx\":\"2b302e3031350d0a\"}; \"rx\":\"2b302e30",
        "{\"t\":9.753; t 9.753",
        "boreledger-capture/1; boreledger-capture/7",
        "\"measure\":\"bore\"; \"measure\":\"soul\"",
        "\"block_temp_c\":21.3; \"block_temp_c\":\"warm\"",
        "\"gauge\":\"signed-decimal.gauge.toml\"; \"gauge\":\"lost.gauge.toml\""
      })
  void aBadCaptureIsRefusedAtItsLine(String good, String bad) {
    int line = bundle.edit(BORE, good, bad);
    assertRefusedAt(BORE, line, BORE);
  }

  @Test
  void aCaptureCutInTheMiddleOfItsLastLineIsRefusedThere() {
    String whole = Bundle.read(folder.resolve(BORE));
    bundle.write(BORE, whole.substring(0, whole.length() - 9));
    assertRefusedAt(BORE, (int) whole.lines().count(), BORE);
  }

  @Test
  void anEmptyCaptureIsRefused() {
    bundle.write(BORE, "");
    assertTrue(assertNothingMade(BORE).contains(BORE));
  }

  @Test
  void aGapCaptureOfARingThatTheJobDoesNotHaveIsRefused() {
    bundle.edit(GAP, "\"ring\":\"top\"", "\"ring\":\"third\"");
    assertRefusedAt(GAP, 1, BORE, GAP);
  }

  @Test
  void aBadSecondCaptureKeepsTheFirstOneOutOfTheLedgerToo() {
    String whole = Bundle.read(folder.resolve(GAP));
    bundle.write(GAP, whole + "{\"t\":\n");
    assertRefusedAt(GAP, 1 + (int) whole.lines().count(), BORE, GAP);
  }

  @Test
  void aMissingFileIsRefusedByItsName() {
    assertTrue(assertNothingMade("gone.capture.jsonl").contains("gone.capture.jsonl"));
    TreeSet<String> before = bundle.names();
    String message = program.run(bundle.replay("gone.job.toml", List.of(BORE))).refused(2);
    assertTrue(message.contains("gone.job.toml"), message);
    assertEquals(before, bundle.names());
  }

  private void assertRefusedAt(String file, int line, String... captures) {
    String message = assertNothingMade(captures);
    String start = "^(?:\\S*/)?" + Pattern.quote(file) + ":" + line + "(?::\\d+)?[: ].+";
    assertTrue(message.matches(start), () -> file + ":" + line + " expected in: " + message);
  }

  private String assertNothingMade(String... captures) {
    TreeSet<String> before = bundle.names();
    Outcome outcome = program.run(bundle.replay(JOB, List.of(captures)));
    String message = outcome.refused(2);
    assertEquals(before, bundle.names(), "nothing is created when the start is refused");
    return message;
  }
}
