package boreledger.station.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapTruthTest {

  /**
   * Bore, cold gap, coefficients of ring and block in 1e-6/K, warming of ring and wall, hot gap:
   * recomputed apart from this project from g = πD(1 + αb·ΔTb) − (πD − g0)(1 + αr·ΔTr).
   */
  @ParameterizedTest
  @CsvSource({
    "100, 0.30, 11.4, 11.4, 80, 80, 0.3002736",
    "100, 0.30, 11.4, 11.4, 180, 100, 0.0141023499926",
    "100, 0.40, 11.7, 21.5, 180, 110, 0.482209649728",
    "82, 0.25, 11.3, 11.4, 200, 90, -0.0673264774314"
  })
  void theHotGapAgreesWithTheRecomputedFigures(
      double boreMm,
      double coldGapMm,
      String ringCte,
      String blockCte,
      double ringWarmK,
      double wallWarmK,
      double hotGapMm) {
    Running running = new Running(20 + ringWarmK, 20 + wallWarmK, 20 + wallWarmK, 0);
    GapTruth truth = roundBore(boreMm, ringCte, blockCte, running);
    double lengthMm = StrictMath.PI * boreMm - coldGapMm;
    assertEquals(hotGapMm, truth.tightestHotMm(lengthMm).gapMm(), 1e-9);
  }

  /** Common practice, no source: 0.03 mm more bore gives about 0.1 mm more gap. */
  @Test
  void aBoreLargerByThreeHundredthsGivesATenthOfGap() {
    Engine engine = PumphouseThree.engine();
    double[] depths = {12, 108};
    Engine tapered = withBore(engine, BoreShape.round(depths, new double[] {96.03, 96.0}));
    GapTruth truth = new GapTruth(tapered, BoreTruth.ofEngine(tapered), tapered.ring("top"), 1);
    assertEquals(-0.03 * StrictMath.PI, truth.expectedChangeMm(108), 1e-9);
  }

  @Test
  void aRingKeepsItsLengthThroughEveryDepthOfAModelledSession() {
    Engine engine = PumphouseThree.engine();
    BoreTruth bores = BoreTruth.ofEngine(engine);
    RingKind top = engine.ring("top");
    GapSession session =
        GapSession.gauge(
            engine, top, PumphouseThree.TOP_GAPS_MM, 0, Wire.signedMm(9), new Noise(1));
    GapTruth truth = new GapTruth(engine, bores, top, 2);
    List<GapReading> readings = session.readings(2);
    assertEquals(3, readings.size());
    for (GapReading reading : readings) {
      double lengthMm = bores.perimeterMm(2, 12) - PumphouseThree.TOP_GAPS_MM.get(1);
      assertEquals(lengthMm, truth.lengthMm(reading), 2e-9);
    }
  }

  @Test
  void cylinderTwoIsRightAtTheTopAndTooTightAtTheBottom() {
    Engine engine = PumphouseThree.engine();
    GapTruth truth = new GapTruth(engine, BoreTruth.ofEngine(engine), engine.ring("top"), 2);
    double lengthMm = engine.bore(2).perimeterMm(12) - PumphouseThree.TOP_GAPS_MM.get(1);
    GapTruth.Tight tightest = truth.tightestMm(lengthMm);
    assertTrue(PumphouseThree.TOP_GAPS_MM.get(1) > truth.ring().gapMinMm() + 0.1);
    assertTrue(tightest.gapMm() < truth.ring().gapMinMm() - 0.02, tightest::toString);
    assertEquals(108, tightest.depthMm());
  }

  private static GapTruth roundBore(
      double boreMm, String ringCte, String blockCte, Running running) {
    RingKind ring =
        new RingKind(
            "top", null, new BigDecimal(ringCte + "e-6"), 5, 95, 0.1, 1, null, 0.4, List.of(10.0));
    BigDecimal cold = BigDecimal.valueOf(20);
    BigDecimal cte = new BigDecimal(blockCte + "e-6");
    Bench bench = new Bench(BigDecimal.valueOf(boreMm), cte, cold, cte, cold);
    Engine engine =
        new Engine(
            "round",
            boreMm,
            90,
            bench,
            new BigDecimal("0.001"),
            Map.of(),
            List.of(10.0, 90.0),
            List.of(Axis.values()),
            List.of(ring),
            running,
            List.of(BoreShape.cylinder(boreMm)));
    return new GapTruth(engine, BoreTruth.ofEngine(engine), ring, 1);
  }

  private static Engine withBore(Engine engine, BoreShape bore) {
    return new Engine(
        engine.name(),
        engine.nominalMm(),
        engine.strokeMm(),
        engine.bench(),
        engine.settingUncertaintyMm(),
        engine.limits(),
        engine.depthsMm(),
        engine.axes(),
        engine.rings(),
        engine.running(),
        List.of(bore));
  }
}
