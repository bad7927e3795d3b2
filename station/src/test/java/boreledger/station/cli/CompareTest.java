package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareTest {
  private static final List<String> TEN_MICRONS_MORE =
      List.of("+0.000", "+0.038", "+0.032", "+0.020", "+0.016", "+0.000");

  @TempDir Path folder;

  @Test
  void aSessionAgainstItselfIsTheSameThroughout() {
    replay(SmallJob.standard(), BenchFolder.BORES);
    long session = sessions().get(0);

    JsonNode changes = compare(session, session, 0).path("changes");

    assertEquals(4 + 2 + 2, changes.size());
    changes.forEach(
        change -> {
          assertEquals("same within uncertainty", change.path("state").asText());
          assertEquals(0, change.path("change_mm").asDouble());
        });
  }

  @Test
  void aBoreThatGrewByTenMicronsIsFoundWithItsUncertainty() {
    replay(SmallJob.standard(), BenchFolder.BORES);
    replay(SmallJob.standard(), TEN_MICRONS_MORE);

    JsonNode answer =
        Ran.command("compare", "--ledger", ledger(), "--job", "Small engine", "--json")
            .ended(0)
            .json();

    int grew = 0;
    for (JsonNode change : answer.path("changes")) {
      if (change.path("what").asText().equals("diameter")) {
        assertEquals("grew", change.path("state").asText(), change::toString);
        assertEquals(0.010, change.path("change_mm").asDouble(), 1e-9);
        // By hand, each session alone, in micrometres: permissible error 2/sqrt 3 = 1.1547;
        // resolution 1/sqrt 12 = 0.2887 of the reading and of the zero; block temperature
        // 96.03 x 11e-6 x 0.5 = 0.5282; setting temperature 96.002 x 11.5e-6 x 0.5 = 0.5520; gauge
        // growth 96.03 x 11.5e-6 x 0.5 = 0.5522; the zero did not move. Root sum of squares 1.5455,
        // of both sessions times sqrt 2 = 2.1857, times 1.95996 = 4.284. The calibration of the
        // ring cancels; coefficients do not count at 20 degrees Celsius.
        assertEquals(0.004284, change.path("expanded_uncertainty_mm").asDouble(), 2e-6);
        grew++;
      } else {
        assertEquals("same within uncertainty", change.path("state").asText(), change::toString);
      }
    }
    assertEquals(4, grew);
  }

  @Test
  void twoSittingsThatReadExactlyTheSameAreStillTwo() {
    replay(SmallJob.standard(), BenchFolder.BORES);
    replay(SmallJob.standard(), BenchFolder.BORES);
    List<Long> sessions = sessions();

    JsonNode changes = compare(sessions.get(0), sessions.get(1), 0).path("changes");

    assertEquals(4 + 2 + 2, changes.size());
    for (JsonNode change : changes) {
      assertEquals(0, change.path("change_mm").asDouble());
      // In micrometres. A diameter: as worked out below. A taper or out-of-round of one sitting:
      // permissible error 1.1547 once, resolution 0.2887 of both its readings; root sum of squares
      // 1.2247, of both sittings times sqrt 2 = 1.7321, times 1.95996 = 3.395.
      double expected = change.path("what").asText().equals("diameter") ? 0.004284 : 0.003395;
      assertEquals(
          expected, change.path("expanded_uncertainty_mm").asDouble(), 2e-6, change::toString);
    }
  }

  @Test
  void anotherSettingRingLeavesBothCalibrationsInTheChange() {
    replay(SmallJob.standard(), BenchFolder.BORES);
    replay(SmallJob.standard().with("96.002", "96.012"), BenchFolder.BORES);
    List<Long> sessions = sessions();

    JsonNode changes = compare(sessions.get(0), sessions.get(1), 0).path("changes");

    int diameters = 0;
    for (JsonNode change : changes) {
      boolean diameter = change.path("what").asText().equals("diameter");
      // The same shown values on a ring 0.010 mm larger: every bore is that much larger.
      assertEquals(diameter ? 0.010 : 0, change.path("change_mm").asDouble(), 1e-9);
      if (diameter) {
        // 1.5455 of each sitting as above and 0.5 for each ring's calibration, 0.001 mm for k = 2:
        // sqrt(2 (1.5455^2 + 0.5^2)) = 2.2972, times 1.95996 = 4.502.
        assertEquals(0.004502, change.path("expanded_uncertainty_mm").asDouble(), 2e-6);
        diameters++;
      }
    }
    assertEquals(4, diameters);
  }

  @Test
  void gapsAreComparedAsReadWithBothSittingsOwnUncertainty() {
    replayGaps(BenchFolder.GAPS);
    replayGaps(List.of("0.450", "0.430"));
    List<Long> sessions = sessions();

    JsonNode answer = compare(sessions.get(0), sessions.get(1), 0);

    assertEquals("gap", answer.path("measure").asText());
    assertEquals("top", answer.path("ring").asText());
    assertEquals(2, answer.path("changes").size());
    JsonNode first = answer.at("/changes/0");
    JsonNode second = answer.at("/changes/1");
    assertEquals("same within uncertainty", first.path("state").asText());
    assertEquals(12.0, first.path("depth_mm").asDouble());
    assertEquals("grew", second.path("state").asText());
    assertEquals(0.020, second.path("change_mm").asDouble(), 1e-9);
    // In micrometres: permissible error 2/sqrt 3 = 1.1547 and resolution 1/sqrt 12 = 0.2887 in
    // each; sqrt(2 (1.1547^2 + 0.2887^2)) = 1.6833, times 1.95996 = 3.299.
    assertEquals(0.003299, second.path("expanded_uncertainty_mm").asDouble(), 2e-6);
  }

  @Test
  void aGapSessionIsNotHeldAgainstABoreSession() {
    replay(SmallJob.standard(), BenchFolder.BORES);
    replayGaps(BenchFolder.GAPS);
    List<Long> sessions = sessions();

    String why =
        Ran.command(
                "compare",
                "--ledger",
                ledger(),
                "--session",
                sessions.get(0),
                "--with",
                sessions.get(1))
            .refused(2)
            .toString();

    assertTrue(why.contains("measured bore") && why.contains("measured gap (top)"), why);
  }

  @Test
  void unlikeConditionsGiveACautionAndUnlikePlansAreTold() {
    SmallJob bare =
        SmallJob.standard()
            .with("cte_per_k = 11.0e-6", "cte_per_k = 11.0e-6\ncondition = \"bare\"");
    replay(bare, BenchFolder.BORES);
    replay(
        SmallJob.atOneDepth()
            .with("cte_per_k = 11.0e-6", "cte_per_k = 11.0e-6\ncondition = \"torque-plate\""),
        List.of("+0.000", "+0.028", "+0.022", "+0.000"));
    List<Long> sessions = sessions();

    JsonNode answer = compare(sessions.get(0), sessions.get(1), 1);

    assertTrue(answer.path("cautions").get(0).asText().contains("torque plate on"));
    assertEquals("bare", answer.at("/before/conditions/condition").asText());
    assertEquals("torque-plate", answer.at("/after/conditions/condition").asText());
    assertEquals(2, answer.path("only_before").size());
    assertEquals(0, answer.path("only_after").size());
  }

  @Test
  void whatCannotBeComparedIsToldInOneLine() {
    replay(SmallJob.standard(), BenchFolder.BORES);
    long session = sessions().get(0);
    Ran.command("compare", "--ledger", ledger()).refused(2);
    Ran.command("compare", "--ledger", ledger(), "--job", "Small engine").refused(2);
    Ran.command("compare", "--ledger", ledger(), "--session", session, "--with", 999).refused(2);
    Ran.command("compare", "--ledger", folder.resolve("no"), "--job", "Small engine").refused(4);
  }

  private Path ledger() {
    return new BenchFolder(folder).ledger();
  }

  private JsonNode compare(long before, long after, int status) {
    return Ran.command(
            "compare", "--ledger", ledger(), "--session", before, "--with", after, "--json")
        .ended(status)
        .json();
  }

  private void replay(SmallJob job, List<String> lines) {
    replay(job, new BenchFolder(folder).bores(lines));
  }

  private void replayGaps(List<String> lines) {
    replay(SmallJob.standard(), new BenchFolder(folder).gaps(lines));
  }

  private void replay(SmallJob job, Path capture) {
    BenchFolder bench = new BenchFolder(folder);
    Ran ran =
        Ran.command("replay", "--job", bench.job(job), "--capture", capture, "--ledger", ledger());
    assertTrue(ran.status() < 2, ran::toString);
  }

  private List<Long> sessions() {
    return Ran.command("export", "--ledger", ledger(), "--out", "-")
        .ended(0)
        .out()
        .lines()
        .skip(1)
        .map(line -> Long.valueOf(line.substring(0, line.indexOf(','))))
        .distinct()
        .toList();
  }
}
