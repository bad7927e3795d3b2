package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * An engine on the bench, with its true bores and rings.
 *
 * @param limits keys and values of the job's [limits] table
 * @param depthsMm of the plan, in the order of the job file
 * @param running null when the job says nothing of running temperatures
 * @param bores one per cylinder
 */
public record Engine(
    String name,
    double nominalMm,
    double strokeMm,
    Bench bench,
    BigDecimal settingUncertaintyMm,
    Map<String, String> limits,
    List<Double> depthsMm,
    List<Axis> axes,
    List<RingKind> rings,
    Running running,
    List<BoreShape> bores) {

  /** All positions in the order of gauging: cylinder, depth from the deck down, axis as listed. */
  public List<Position> plan() {
    List<Position> plan = new ArrayList<>();
    for (int cylinder = 1; cylinder <= bores.size(); cylinder++) {
      for (double depthMm : depthsDownMm()) {
        for (Axis axis : axes) {
          plan.add(new Position(cylinder, depthMm, axis));
        }
      }
    }
    return plan;
  }

  /** The plan's depths from the deck down. */
  public List<Double> depthsDownMm() {
    return depthsMm.stream().sorted().toList();
  }

  /** The bore of a cylinder, counted from 1. */
  public BoreShape bore(int cylinder) {
    return bores.get(cylinder - 1);
  }

  /** True diameter at 20 °C of a position. */
  public double trueDiameterMm(Position position) {
    return bore(position.cylinder()).diameterMm(position.depthMm(), position.axis());
  }

  /** The ring of this name. */
  public RingKind ring(String ringName) {
    return rings.stream().filter(r -> r.name().equals(ringName)).findFirst().orElseThrow();
  }
}
