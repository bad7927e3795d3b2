package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.results.BoreResults;
import boreledger.station.results.JobResults;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole practised sessions, from the model's hand to the ledger, against the model's truth. */
@Timeout(120)
class PracticeTest {
  private static final double SETTING_C = 20.4;
  private static final double BLOCK_C = 22.1;
  private static final double PACE = 500;
  private static final SmallJob THREE = SmallJob.standard().with("cylinders = 1", "cylinders = 3");

  @TempDir Path folder;
  private BenchFolder bench;
  private Path jobFile;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
    jobFile = bench.job(THREE);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void practisedBoresAreThoseOfTheModelWithinTheirUncertainty(long seed) throws Exception {
    JobResults results = practise(Measure.BORE, null, seed);

    PracticeEngine truth = engine(seed);
    List<String> off = new ArrayList<>();
    int compared = 0;
    for (JobResults.CylinderResults cylinder : results.cylinders()) {
      for (BoreResults.PositionResult each : cylinder.bore().positions()) {
        Position.Bore place = new Position.Bore(cylinder.cylinder(), each.depthMm(), each.axis());
        double errorMm = each.diameterMm() - truth.diameterMm(place);
        compared++;
        if (Math.abs(errorMm) > each.expandedUncertaintyMm()) {
          off.add(place.words() + ": " + errorMm + " mm off");
        }
      }
    }
    assertEquals(12, compared);
    assertEquals(List.of(), off, "seed " + seed);
  }

  @Test
  void everyPositionIsGaugedOnceAndInOrder() throws Exception {
    practise(Measure.BORE, null, 4);

    StoredSession stored = stored().get(0);
    assertTrue(stored.ended());
    assertEquals(14, stored.readings().size());
    assertEquals("practice gauge, seed 4", stored.opened().line());
  }

  @Test
  void theSessionsClockRunsAtThePaceOfThePractice() throws Exception {
    long startNs = System.nanoTime();
    practise(Measure.BORE, null, 5);
    double practisedS = PACE * (System.nanoTime() - startNs) / 1e9;

    StoredSession stored = stored().get(0);
    double rockedS = stored.lastTS();
    assertTrue(rockedS > 14 * 6, "a natural time: " + rockedS + " s");
    assertTrue(rockedS < practisedS, rockedS + " s, in at most " + practisedS + " s");
  }

  @Test
  void practisedGapsAgreeWithThePractisedBores() throws Exception {
    practise(Measure.BORE, null, 6);
    JobResults results = practise(Measure.GAP, "top", 6);

    assertEquals(6, stored().get(1).readings().size());
    int compared = 0;
    for (JobResults.CylinderResults cylinder : everything().cylinders()) {
      for (var gap : cylinder.rings().get(0).gaps()) {
        assertEquals(gap.expectedMm(), gap.measuredMm(), 0.03, gap::toString);
        compared++;
      }
    }
    assertEquals(6, compared);
    assertEquals(3, results.cylinders().size());
  }

  @Test
  void practisedRingDepthsAreTyped() throws Exception {
    practise(Measure.RING_DEPTH, "top", 7);

    List<StoredSession.StoredReading> readings = stored().get(0).readings();
    assertEquals(24, readings.size());
    for (StoredSession.StoredReading each : readings) {
      Position.RingDepth place = (Position.RingDepth) each.position();
      assertEquals(place.depthMm(), each.reading().valueMm(), 0.2);
    }
  }

  private JobResults practise(Measure measure, String ring, long seed) throws Exception {
    LiveRequest request =
        new LiveRequest(
            jobFile,
            new LiveChoice.Practice(seed, PACE),
            measure,
            ring,
            SETTING_C,
            BLOCK_C,
            bench.ledger(),
            false);
    try (LiveGauging gauging = LiveGauging.prepare(request)) {
      return gauging.run(new Play(event -> {}));
    }
  }

  private PracticeEngine engine(long seed) throws Exception {
    Job job = new JobFiles(SmallJob.tables()).read(jobFile);
    return new PracticeEngine(job, seed, SETTING_C, BLOCK_C);
  }

  private JobResults everything() throws Exception {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return new StoredJobs(view).latestResults();
    }
  }

  private List<StoredSession> stored() throws Exception {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return StoredSession.all(view);
    }
  }
}
