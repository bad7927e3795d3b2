package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.job.DisplayUnit;
import boreledger.station.results.BoreResults;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.LengthFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class VerdictsTest {
  private static final LengthFormat MM = new LengthFormat(DisplayUnit.MM);

  @Test
  void keptLimitsAreToldWithEachValueOnce() {
    assertEquals(
        new Verdict(
            Verdict.Kind.KEPT,
            "Cylinder 2",
            "within every limit given",
            "taper 0.0310, largest bore 96.0213 mm"),
        bore(
            check("taper", 0.031, 0.05, "within"),
            check("bore-max", 96.0213, 96.03, "within"),
            check("wear-limit", 96.0213, 96.15, "within")));
  }

  @Test
  void whatIsBeyondItsLimitComesFirst() {
    assertEquals(
        new Verdict(
            Verdict.Kind.BEYOND,
            "Cylinder 2",
            "beyond the limit: out-of-round",
            "out-of-round 0.0410 \u00b1 0.0024 mm, limit 0.030 mm"),
        bore(
            check("taper", 0.049, 0.05, "undecided"),
            check("out-of-round", 0.041, 0.03, "beyond"),
            check("bore-min", 96.001, 96.0, null)));
  }

  @Test
  void whatIsTooNearItsLimitIsNotCalledKept() {
    assertEquals(
        new Verdict(
            Verdict.Kind.LOOK,
            "Cylinder 2",
            "too near the limit to tell: taper",
            "taper 0.0490 \u00b1 0.0024 mm, limit 0.050 mm"),
        bore(check("taper", 0.049, 0.05, "undecided"), check("bore-max", 96.02, 96.03, "within")));
  }

  @Test
  void anOpenCheckLeavesTheVerdictOpen() {
    assertEquals(
        new Verdict(Verdict.Kind.OPEN, "Cylinder 2", "not decided yet, readings are missing", ""),
        bore(check("taper", 0.031, 0.05, null), check("bore-max", 96.02, 96.03, null)));
  }

  @Test
  void withoutLimitsThereIsNothingToHoldItAgainst() {
    assertEquals(
        new Verdict(
            Verdict.Kind.OPEN, "Cylinder 2", "the job gives no limits to hold it against", ""),
        bore());
  }

  @Test
  void aCylinderThatWasNotReadIsNotJudged() {
    BoreResults unread =
        new BoreResults(
            List.of(new PositionResult(12, "thrust", null, null, null)),
            Map.of(),
            Map.of(),
            List.of(),
            null,
            null,
            null,
            List.of());

    assertEquals(
        "not decided yet, readings are missing",
        new BoreVerdicts(MM).verdict(new CylinderResults(2, unread, List.of())).words());
  }

  @Test
  void aRingThatIsTooTightSaysHowMuchItLacks() {
    assertEquals(
        new Verdict(
            Verdict.Kind.LOOK,
            "Cylinder 2",
            "lacks 0.1350 mm to its target: file less, then gauge again",
            "tightest 0.3850 mm at 108 mm, hot 0.210 mm"),
        gap("file", tightest(0.385, 0.21), 0.135, 0.48));
  }

  @Test
  void aRingsOtherStatesAreToldToo() {
    TightestResult cold = tightest(0.525, 0.3);

    assertEquals(
        new Verdict(
            Verdict.Kind.KEPT,
            "Cylinder 2",
            "has its target gap",
            "tightest 0.5250 mm at 108 mm, hot 0.300 mm"),
        gap("ready", cold, null, 0.53));
    assertEquals(Verdict.Kind.BEYOND, gap("too-wide", cold, null, 0.53).kind());
    assertEquals("wider than its limit", gap("too-wide", cold, null, 0.53).words());
    assertEquals(
        new Verdict(Verdict.Kind.OPEN, "Cylinder 2", "1 of 2 gaps read, no advice yet", ""),
        gap("unknown", null, null, 0.48));
    assertEquals("no gap read yet", gap("unknown", null, null, null).words());
    assertEquals(
        "tighter than its target: file a little, gauge again",
        gap("file", cold, null, 0.48).words());
  }

  @Test
  void aGapThatClosesWhenHotIsToldBeforeAnyOtherState() {
    for (String state : List.of("file", "ready", "too-wide", "unknown")) {
      Verdict verdict = gap(state, tightest(0.2787, -0.0194), null, 0.48);

      assertEquals(
          new Verdict(
              Verdict.Kind.BEYOND,
              "Cylinder 2",
              "the gap closes when hot: do not run it so, see the maker's data",
              "tightest 0.2787 mm at 108 mm, hot \u22120.019 mm"),
          verdict);
    }
  }

  @Test
  void aRingWithoutResultsIsNotJudged() {
    CylinderResults none = new CylinderResults(2, readBore(), List.of());

    assertEquals("no gap read yet", new GapVerdicts(MM, "top").verdict(none).words());
  }

  private static Verdict bore(CheckResult... checks) {
    BoreResults bore =
        new BoreResults(
            readBore().positions(),
            Map.of(),
            Map.of(),
            List.of(),
            null,
            null,
            null,
            List.of(checks));
    return new BoreVerdicts(MM).verdict(new CylinderResults(2, bore, List.of()));
  }

  private static BoreResults readBore() {
    return new BoreResults(
        List.of(new PositionResult(12, "thrust", 96.01, 0.003, List.of())),
        Map.of(),
        Map.of(),
        List.of(),
        null,
        null,
        null,
        List.of());
  }

  private static CheckResult check(String name, double valueMm, double limitMm, String state) {
    return new CheckResult(name, valueMm, limitMm, 0.0024, state, 0.5, List.of());
  }

  private static Verdict gap(
      String state, TightestResult tightest, Double removeMm, Double measuredMm) {
    RingResults ring =
        new RingResults(
            "top",
            null,
            List.of(read(12, measuredMm), read(60, null)),
            tightest,
            0.52,
            null,
            removeMm,
            state,
            null,
            false,
            List.of(),
            List.of());
    return new GapVerdicts(MM, "top").verdict(new CylinderResults(2, readBore(), List.of(ring)));
  }

  private static TightestResult tightest(double gapMm, double hotGapMm) {
    return new TightestResult(
        108, gapMm, 0.007, hotGapMm, 108, "the job", 0.3, gapMm, false, List.of());
  }

  private static GapResult read(double depthMm, Double measuredMm) {
    return new GapResult(depthMm, measuredMm, null, null, null, null, null, null, null, false);
  }
}
