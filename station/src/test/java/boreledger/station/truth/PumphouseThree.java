package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The invented engine of the sample captures: three cylinders of 96 mm, built to drive a water
 * pump, about to get a small blower. Cylinder 1 is fresh, cylinder 2 wide at the top, cylinder 3
 * oval.
 */
public final class PumphouseThree {
  /** Height below the deck of the gauged planes. */
  private static final double[] PLANES_MM = {12, 60, 108};

  private static final List<Double> DEPTHS_MM = List.of(12.0, 60.0, 108.0);

  /** True gaps of the top rings at 20 °C at 12 mm, cylinder 1 to 3. */
  static final List<Double> TOP_GAPS_MM = List.of(0.422, 0.404, 0.447);

  /** True gaps of the second rings at 20 °C at 12 mm, cylinder 1 to 3. */
  static final List<Double> SECOND_GAPS_MM = List.of(0.652, 0.616, 0.688);

  private PumphouseThree() {}

  /** The engine and its bench: block at 21.3 °C, setting ring at 20.4 °C and of another steel. */
  public static Engine engine() {
    Bench bench =
        new Bench(
            new BigDecimal("96.002"),
            new BigDecimal("11.5e-6"),
            new BigDecimal("20.4"),
            new BigDecimal("10.8e-6"),
            new BigDecimal("21.3"));
    return new Engine(
        "Pumphouse three",
        96.0,
        104.0,
        bench,
        new BigDecimal("0.001"),
        limits(),
        DEPTHS_MM,
        List.of(Axis.THRUST, Axis.PIN),
        List.of(top(), second(), oilRail()),
        new Running(190, 160, 130, 0.05),
        List.of(freshBore(), worn(), oval()));
  }

  /** The same engine as if it had cylinder 1 only, with nothing that asks for attention. */
  public static Engine fresh() {
    Engine three = engine();
    return new Engine(
        "Pumphouse one",
        three.nominalMm(),
        three.strokeMm(),
        three.bench(),
        three.settingUncertaintyMm(),
        three.limits(),
        three.depthsMm(),
        three.axes(),
        three.rings(),
        three.running(),
        List.of(freshBore()));
  }

  /** The zero walks by 1.6 µm while a session of this length lasts. */
  static Drift drift(double lengthS) {
    return new Drift(0.001, 0.0026, lengthS);
  }

  private static Map<String, String> limits() {
    Map<String, String> limits = new LinkedHashMap<>();
    limits.put("bore_min_mm", "96.000");
    limits.put("bore_max_mm", "96.030");
    limits.put("wear_limit_mm", "96.150");
    limits.put("taper_max_mm", "0.050");
    limits.put("out_of_round_max_mm", "0.030");
    limits.put("oversizes_mm", "[0.25, 0.50, 1.00]");
    limits.put("honing_allowance_mm", "0.05");
    return limits;
  }

  private static BoreShape freshBore() {
    return BoreShape.round(PLANES_MM, new double[] {96.0134, 96.0126, 96.0121})
        .plus(BoreShape.oval(PLANES_MM, new double[] {0.0036, 0.0028, 0.0022}, 20));
  }

  private static BoreShape worn() {
    return BoreShape.round(PLANES_MM, new double[] {96.0597, 96.0381, 96.0184})
        .plus(BoreShape.oval(PLANES_MM, new double[] {0.0093, 0.0061, 0.0034}, 10));
  }

  private static BoreShape oval() {
    return BoreShape.round(PLANES_MM, new double[] {96.0463, 96.0452, 96.0339})
        .plus(BoreShape.oval(PLANES_MM, new double[] {0.0312, 0.0478, 0.0203}, 5));
  }

  private static RingKind top() {
    return new RingKind(
        "top",
        "ductile-iron",
        new BigDecimal("11.2e-6"),
        9.0,
        113.0,
        0.30,
        0.75,
        "boosted-hard",
        null,
        DEPTHS_MM);
  }

  private static RingKind second() {
    return new RingKind(
        "second",
        "grey-iron",
        new BigDecimal("11.4e-6"),
        13.5,
        117.5,
        0.35,
        0.85,
        null,
        0.64,
        DEPTHS_MM);
  }

  private static RingKind oilRail() {
    return new RingKind(
        "oil-rail",
        null,
        new BigDecimal("11.7e-6"),
        18.0,
        122.0,
        0.40,
        1.00,
        null,
        0.70,
        List.of(60.0, 108.0));
  }
}
