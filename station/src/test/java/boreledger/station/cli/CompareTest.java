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
    BenchFolder bench = new BenchFolder(folder);
    Path capture = bench.bores(lines);
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
