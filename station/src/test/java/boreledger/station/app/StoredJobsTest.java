package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.audit.AuditedLedger;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.SmallJob;
import boreledger.station.wording.Wording;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoredJobsTest {
  private static final SmallJob OTHER = SmallJob.standard().with("Small engine", "Other engine");

  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
  }

  @Test
  void theOnlyJobNeedsNoName() throws Exception {
    gauge(SmallJob.standard());

    assertEquals("Small engine", results(null).job());
  }

  @Test
  void oneOfSeveralJobsIsFoundByItsNameWithItsOwnReadings() throws Exception {
    gauge(SmallJob.standard());
    gauge(OTHER.with("size_mm = 96.002", "size_mm = 96.003"));

    // Setting ring plus reading: 96.002 + 0.028 mm, and 96.003 + 0.028 mm.
    assertEquals(96.030, firstDiameter(results("Small engine")), 1e-9);
    assertEquals(96.031, firstDiameter(results("Other engine")), 1e-9);
  }

  @Test
  void severalJobsWantANameAndAreListed() throws Exception {
    gauge(SmallJob.standard());
    gauge(OTHER);

    UsageProblem problem = assertThrows(UsageProblem.class, () -> results(null));

    assertEquals(
        "several jobs in this ledger, name one with --job: \"Small engine\", \"Other engine\"",
        problem.getMessage());
  }

  @Test
  void severalSessionsOfOneJobAreNoSeveralJobs() throws Exception {
    gauge(SmallJob.standard());
    gauge(SmallJob.standard());

    assertEquals("Small engine", results(null).job());
  }

  /** A ledger of a million readings opens as soon as a short one, as long as this holds. */
  @Test
  void aSessionThatDoesNotCountAnyMoreIsNotRead() throws Exception {
    gauge(SmallJob.standard());
    gauge(SmallJob.standard());
    AuditedLedger.at(bench.ledger())
        .tampered("UPDATE entry SET body = '{\"kind\":\"reading\",\"session\":7}' WHERE seq = 9");

    assertEquals(96.030, firstDiameter(results(null)), 1e-9);
  }

  @Test
  void anEarlierSessionsAmendedConditionsAreTheOnesThatAreCompared() throws Exception {
    SmallJob bare = SmallJob.standard().with("[limits]", "condition = \"bare\"\n[limits]");
    gauge(bare);
    gauge(bare);
    assertEquals(List.of(), comparing(results(null)));

    Path plate =
        bench.job(SmallJob.standard().with("[limits]", "condition = \"torque-plate\"\n[limits]"));
    new LedgerBook(bench.ledger())
        .amend(
            7,
            new SessionChange(null, null, null, plate),
            "the plate was on",
            "A. Turner",
            Clock.systemUTC());

    assertTrue(
        comparing(results(null)).get(0).startsWith("Session 7 (bore) was gauged with torque"));
  }

  private static List<String> comparing(JobResults results) {
    return Wording.PLAIN.each(results.cautions()).stream()
        .filter(each -> each.contains("do not compare"))
        .toList();
  }

  @Test
  void anUnknownJobIsToldWithThoseThereAre() throws Exception {
    gauge(SmallJob.standard());

    UsageProblem problem = assertThrows(UsageProblem.class, () -> results("small engine"));

    assertEquals(
        "no job named small engine in this ledger, it has \"Small engine\"", problem.getMessage());
  }

  @Test
  void aLedgerWithoutSessionsSaysSo() throws Exception {
    Ledger.openOrCreate(bench.ledger()).close();

    UsageProblem problem = assertThrows(UsageProblem.class, () -> results(null));

    assertEquals("no session in this ledger yet; gauge something first", problem.getMessage());
  }

  @Test
  void aLedgerWithoutSessionsSaysSoWhateverJobIsNamed() throws Exception {
    Ledger.openOrCreate(bench.ledger()).close();

    UsageProblem problem = assertThrows(UsageProblem.class, () -> results("Small engine"));

    assertEquals("no session in this ledger yet; gauge something first", problem.getMessage());
  }

  @Test
  void aLedgerThatLacksTheJobsTextIsAFaultOfTheLedger() throws Exception {
    try (Ledger ledger = Ledger.openOrCreate(bench.ledger())) {
      ledger.append(
          new SessionOpened(
              "Small engine",
              "00",
              "11",
              List.of(),
              Measure.BORE,
              null,
              Instant.EPOCH,
              null,
              null,
              "a line",
              "0"));
    }

    LedgerFault fault = assertThrows(LedgerFault.class, () -> results(null));

    assertTrue(fault.getMessage().startsWith("the ledger lacks its "), fault::getMessage);
  }

  private void gauge(SmallJob job) throws Exception {
    Path capture = bench.bores(BenchFolder.BORES);
    Replay.prepare(bench.job(job), List.of(capture), null).into(bench.ledger(), event -> {});
  }

  private JobResults results(String job) throws Exception {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return new StoredJobs(view).results(job);
    }
  }

  private static double firstDiameter(JobResults results) {
    return results.cylinders().get(0).bore().positions().get(0).diameterMm();
  }
}
