package boreledger.station.blackbox;

import boreledger.station.truth.Axis;
import boreledger.station.truth.Bench;
import boreledger.station.truth.BoreShape;
import boreledger.station.truth.Engine;
import boreledger.station.truth.Noise;
import boreledger.station.truth.RingKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Draws engines of 1 to 8 cylinders, some worn badly, on benches from cold to hot. */
final class RandomEngine {
  private final Noise noise;
  private final double nominalMm;
  private final double strokeMm;
  private final double travelTopMm;
  private final double travelBottomMm;

  RandomEngine(Noise noise) {
    this.noise = noise;
    nominalMm = decimals(noise.between(40.0, 160.0), 1);
    strokeMm = decimals(nominalMm * noise.between(0.7, 1.3), 1);
    travelTopMm = decimals(noise.between(4.0, 8.0), 1);
    travelBottomMm = decimals(travelTopMm + strokeMm, 1);
  }

  Engine engine(String name) {
    List<Double> depthsMm = depths(noise.between(1, 6), travelTopMm, travelBottomMm);
    List<BoreShape> bores = new ArrayList<>();
    int cylinders = noise.between(1, 8);
    for (int i = 0; i < cylinders; i++) {
      bores.add(bore());
    }
    List<Axis> axes = new ArrayList<>(List.of(Axis.values()));
    Collections.shuffle(axes, noise.source());
    List<RingKind> rings = new ArrayList<>();
    rings.add(ring("top", depthsMm));
    if (noise.chance(0.4)) {
      rings.add(ring("second", depthsMm));
    }
    return new Engine(
        name,
        nominalMm,
        strokeMm,
        bench(),
        new BigDecimal("0.001"),
        noise.chance(0.5) ? Map.of() : Map.of("out_of_round_max_mm", "0.050"),
        depthsMm,
        axes,
        rings,
        null,
        bores);
  }

  private Bench bench() {
    return new Bench(
        exact(nominalMm + noise.between(-0.05, 0.05), 4),
        cte(),
        exact(noise.between(5.0, 35.0), 1),
        cte(),
        exact(noise.between(5.0, 35.0), 1));
  }

  private BigDecimal cte() {
    return exact(noise.between(5.0, 25.0), 1).movePointLeft(6);
  }

  private BoreShape bore() {
    double[] at = {0, strokeMm / 2, 2 * strokeMm};
    double[] mean = new double[3];
    double[] oval = new double[3];
    for (int i = 0; i < 3; i++) {
      mean[i] = nominalMm + noise.between(-0.15, 0.55);
      oval[i] = noise.between(0.0, 0.3);
    }
    return BoreShape.round(at, mean).plus(BoreShape.oval(at, oval, noise.between(0.0, 180.0)));
  }

  /** Gauged at some of the plan's depths and perhaps between them, listed in any order. */
  private RingKind ring(String name, List<Double> planMm) {
    double highestMm = Collections.min(planMm);
    double lowestMm = Collections.max(planMm);
    TreeSet<Double> gaugedMm = new TreeSet<>();
    List<Double> shuffled = new ArrayList<>(planMm);
    Collections.shuffle(shuffled, noise.source());
    gaugedMm.addAll(shuffled.subList(0, noise.between(1, planMm.size())));
    if (planMm.size() > 1 && noise.chance(0.5)) {
      gaugedMm.addAll(depths(1, highestMm, lowestMm));
    }
    List<Double> listedMm = new ArrayList<>(gaugedMm);
    Collections.shuffle(listedMm, noise.source());
    return new RingKind(
        name, "ductile-iron", cte(), travelTopMm, travelBottomMm, 0.2, 0.9, null, 0.45, listedMm);
  }

  private List<Double> depths(int count, double highestMm, double lowestMm) {
    TreeSet<Double> depths = new TreeSet<>();
    while (depths.size() < count) {
      depths.add(decimals(noise.between(highestMm, lowestMm), 1));
    }
    List<Double> listed = new ArrayList<>(depths);
    Collections.shuffle(listed, noise.source());
    return listed;
  }

  private static double decimals(double value, int decimals) {
    return exact(value, decimals).doubleValue();
  }

  private static BigDecimal exact(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
  }
}
