package boreledger.station.results;

import boreledger.calc.gapping.GapLimits;
import boreledger.calc.gapping.GapTarget;
import boreledger.calc.match.BoreToFill;
import boreledger.calc.match.RingMatch;
import boreledger.calc.match.RingToPlace;
import boreledger.calc.ring.GappedRing;
import boreledger.calc.ring.RingTravel;
import boreledger.station.job.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Chooses which of the gauged rings of a kind goes into which bore.
 *
 * <p>A bore counts with the perimeter at the tightest point of the ring's travel. The largest gap
 * holds at the widest point, so it is taken less the spread of the perimeter along the travel.
 */
final class RingChoosing {
  private RingChoosing() {}

  /** The choice; empty with fewer than two gauged rings, or for a ring that is only verified. */
  static Optional<RingChoice> of(Ring ring, List<CylinderRing> cylinders) {
    List<RingToPlace> rings = new ArrayList<>();
    List<BoreToFill> bores = new ArrayList<>();
    for (CylinderRing each : cylinders) {
      Optional<GapTarget> target = each.gapping().filed();
      Optional<GappedRing> gapped = each.gapped().filter(one -> !one.gaps().isEmpty());
      if (gapped.isPresent() && target.isPresent()) {
        RingTravel travel = each.gapping().travel(gapped.get());
        rings.add(new RingToPlace(name(each), travel.developedLengthMm()));
        bores.add(bore(each, travel, target.get(), ring));
      }
    }
    return rings.size() < 2
        ? Optional.empty()
        : Optional.of(RingChoice.of(RingMatch.of(rings, bores)));
  }

  private static BoreToFill bore(
      CylinderRing cylinder, RingTravel travel, GapTarget target, Ring ring) {
    double tightestMm = travel.tightestCold().gapMm();
    double spreadMm = travel.widestCold().gapMm() - tightestMm;
    double targetMm =
        target.notBelowMinimum(new GapLimits(ring.gapMinMm(), ring.gapMaxMm())).targetMm();
    return new BoreToFill(
        "cylinder " + cylinder.cylinder(),
        travel.developedLengthMm() + tightestMm,
        targetMm,
        Math.max(targetMm, ring.gapMaxMm() - spreadMm));
  }

  private static String name(CylinderRing ring) {
    String mark = ring.mark();
    return mark == null ? ring.ring().name() + " gauged in cylinder " + ring.cylinder() : mark;
  }
}
