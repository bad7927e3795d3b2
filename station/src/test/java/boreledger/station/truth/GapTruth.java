package boreledger.station.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What one ring's gap readings and its bore's perimeters say together.
 *
 * <p>Derivation. The closed ring fills the perimeter but for its gap, so its developed length at
 * the bench is the bench's perimeter less the gap; each length shrinks to 20 °C by its own
 * coefficient. The ring keeps its length wherever it sits, so its gap at 20 °C is the perimeter
 * there less that length. All readings of a ring come from one gauge, so they weigh the same.
 */
public record GapTruth(Engine engine, BoreTruth bores, RingKind ring, int cylinder) {

  /** A place in the travel and the gap there. */
  public record Tight(double depthMm, double gapMm) {}

  /** Change of the gap from the shallowest depth at which this ring is gauged. */
  public double expectedChangeMm(double depthMm) {
    double shallowest = ring.gaugingOrderMm().get(0);
    return bores.perimeterMm(cylinder, depthMm) - bores.perimeterMm(cylinder, shallowest);
  }

  /** Developed length of the ring at 20 °C that one gap reading tells. */
  public double lengthMm(GapReading reading) {
    double perimeterNow =
        bores.perimeterMm(cylinder, reading.depthMm()) * engine.bench().blockGrowth().doubleValue();
    return (perimeterNow - reading.mm().doubleValue()) / ringGrowth(engine.bench());
  }

  /** The gap at the bench of a ring with this length at 20 °C. */
  public double gapAtBenchMm(double lengthMm, double depthMm) {
    return bores.perimeterMm(cylinder, depthMm) * engine.bench().blockGrowth().doubleValue()
        - lengthMm * ringGrowth(engine.bench());
  }

  /** Mean length from several readings. */
  public double meanLengthMm(List<GapReading> readings) {
    return readings.stream().mapToDouble(this::lengthMm).average().orElseThrow();
  }

  /** Gap at 20 °C at the depth of a reading, as the ring's other readings tell it. */
  public double expectedMm(GapReading leftOut, List<GapReading> readings) {
    List<GapReading> others = new ArrayList<>(readings);
    others.remove(leftOut);
    return bores.perimeterMm(cylinder, leftOut.depthMm()) - meanLengthMm(others);
  }

  /** Smallest gap at 20 °C over the travel. */
  public Tight tightestMm(double lengthMm) {
    return smallest(depthMm -> bores.perimeterMm(cylinder, depthMm) - lengthMm);
  }

  /** Smallest gap over the travel with ring and wall at their running temperatures. */
  public Tight tightestHotMm(double lengthMm) {
    Running running = engine.running();
    double ringCte = ring.ctePerK().doubleValue();
    double blockCte = engine.bench().blockCtePerK().doubleValue();
    double hotLengthMm = lengthMm * (1 + ringCte * (running.ringTempC() - 20));
    return smallest(
        depthMm ->
            bores.perimeterMm(cylinder, depthMm)
                    * (1 + blockCte * (running.wallTempC(ring, depthMm) - 20))
                - hotLengthMm);
  }

  private double ringGrowth(Bench bench) {
    return Bench.growth(ring.ctePerK(), bench.blockTempC()).doubleValue();
  }

  /** Between two nodes every term is straight or a product of two straight lines: look closely. */
  private Tight smallest(java.util.function.DoubleUnaryOperator gapMm) {
    TreeMap<Double, Double> known = bores.perimetersMm(cylinder);
    TreeSet<Double> places = new TreeSet<>(known.keySet());
    for (int i = 0; i <= 1000; i++) {
      places.add(ring.travelTopMm() + (ring.travelBottomMm() - ring.travelTopMm()) * (i / 1000.0));
    }
    Tight best = null;
    for (double depthMm : places.subSet(ring.travelTopMm(), true, ring.travelBottomMm(), true)) {
      double gap = gapMm.applyAsDouble(depthMm);
      if (best == null || gap < best.gapMm() - 1e-9) {
        best = new Tight(depthMm, gap);
      }
    }
    return best;
  }
}
