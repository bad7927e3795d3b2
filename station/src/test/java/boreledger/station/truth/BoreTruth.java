package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Diameters at 20 °C of a session and what follows from them, cylinder by cylinder. */
public final class BoreTruth {
  private final Map<Position, BigDecimal> diameters;

  private BoreTruth(Map<Position, BigDecimal> diameters) {
    this.diameters = diameters;
  }

  /** From readings whose first, and perhaps last, was taken on the setting ring. */
  public static BoreTruth ofReadings(Bench bench, List<BoreReading> readings) {
    Zero zero = zeroOf(readings);
    Map<Position, BigDecimal> diameters = new LinkedHashMap<>();
    for (BoreReading reading : readings) {
      if (!reading.onSettingRing()) {
        diameters.put(
            reading.position(), bench.diameterAt20Mm(reading.mm(), zero.atMm(reading.tS())));
      }
    }
    return new BoreTruth(diameters);
  }

  /** The true diameters of a plan, as if gauged without any error. */
  public static BoreTruth ofEngine(Engine engine) {
    Map<Position, BigDecimal> diameters = new LinkedHashMap<>();
    for (Position place : engine.plan()) {
      diameters.put(place, BigDecimal.valueOf(engine.trueDiameterMm(place)));
    }
    return new BoreTruth(diameters);
  }

  private static Zero zeroOf(List<BoreReading> readings) {
    BoreReading first = readings.get(0);
    BoreReading last = readings.get(readings.size() - 1);
    if (!first.onSettingRing()) {
      throw new IllegalArgumentException("no opening check");
    }
    boolean closed = readings.size() > 1 && last.onSettingRing();
    return new Zero(first.tS(), first.mm(), closed ? last.tS() : null, closed ? last.mm() : null);
  }

  /** Diameter by position, in the order of gauging. */
  public Map<Position, BigDecimal> diametersMm() {
    return Collections.unmodifiableMap(diameters);
  }

  /** Largest minus smallest diameter along an axis. */
  public BigDecimal taperMm(int cylinder, Axis axis) {
    return spread(
        diameters.entrySet().stream()
            .filter(e -> e.getKey().cylinder() == cylinder && e.getKey().axis() == axis)
            .map(Map.Entry::getValue)
            .toList());
  }

  /** Largest minus smallest diameter across the axes at a depth. */
  public BigDecimal outOfRoundMm(int cylinder, double depthMm) {
    return spread(
        diameters.entrySet().stream()
            .filter(e -> e.getKey().cylinder() == cylinder && e.getKey().depthMm() == depthMm)
            .map(Map.Entry::getValue)
            .toList());
  }

  /** Perimeter at 20 °C by depth, where both axes were read. */
  public TreeMap<Double, Double> perimetersMm(int cylinder) {
    TreeMap<Double, Double> perimeters = new TreeMap<>();
    for (Position place : diameters.keySet()) {
      BigDecimal thrust = diameters.get(new Position(cylinder, place.depthMm(), Axis.THRUST));
      BigDecimal pin = diameters.get(new Position(cylinder, place.depthMm(), Axis.PIN));
      if (place.cylinder() == cylinder && thrust != null && pin != null) {
        perimeters.computeIfAbsent(
            place.depthMm(),
            depth -> EllipsePerimeter.ofDiametersMm(thrust.doubleValue(), pin.doubleValue()));
      }
    }
    return perimeters;
  }

  /** Perimeter at any depth: straight between gauged depths, level beyond them. */
  public double perimeterMm(int cylinder, double depthMm) {
    TreeMap<Double, Double> known = perimetersMm(cylinder);
    return new Polyline(numbers(known.keySet()), numbers(known.values())).at(depthMm);
  }

  private static double[] numbers(java.util.Collection<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static BigDecimal spread(List<BigDecimal> values) {
    return Collections.max(values).subtract(Collections.min(values));
  }
}
