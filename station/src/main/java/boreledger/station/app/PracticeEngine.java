package boreledger.station.app;

import boreledger.drivers.practice.PracticeBore;
import boreledger.drivers.practice.PracticeTask;
import boreledger.station.job.Engine;
import boreledger.station.job.Job;
import boreledger.station.job.Limits;
import boreledger.station.job.Ring;
import boreledger.station.plan.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * An engine invented for a job: used bores near its limits, and rings whose gaps go with them. The
 * same job and seed give the same engine, whatever is measured on it.
 */
final class PracticeEngine {
  private static final double REFERENCE_C = 20;
  private static final double NEW_BORE_TOLERANCE_MM = 0.03;
  private static final double MOST_TILT_MM = 0.12;
  private static final double QUARTER_DEG = 90;

  private final Job job;
  private final long seed;
  private final double settingKelvin;
  private final double blockKelvin;
  private final List<PracticeBore> bores = new ArrayList<>();

  /**
   * @param settingTempC the setting ring's temperature; null for 20 °C
   * @param blockTempC the block's temperature; null for 20 °C
   */
  PracticeEngine(Job job, long seed, Double settingTempC, Double blockTempC) {
    this.job = job;
    this.seed = seed;
    settingKelvin = settingTempC == null ? 0 : settingTempC - REFERENCE_C;
    blockKelvin = blockTempC == null ? 0 : blockTempC - REFERENCE_C;
    for (int cylinder = 1; cylinder <= job.engine().cylinders(); cylinder++) {
      bores.add(bore(cylinder));
    }
  }

  /** What the hand meets at a position. */
  PracticeTask at(Position position) {
    if (position instanceof Position.Bore place) {
      return rock(place);
    } else if (position instanceof Position.Gap place) {
      return new PracticeTask.Type(gapMm(place));
    } else if (position instanceof Position.RingDepth place) {
      return new PracticeTask.Type(ringDepthMm(place));
    }
    return new PracticeTask.Rock(settingNowMm(), settingNowMm(), 0);
  }

  /** The diameter at 20 °C that was invented for a place. */
  double diameterMm(Position.Bore place) {
    return bores.get(place.cylinder() - 1).diameterMm(place.depthMm(), directionDeg(place.axis()));
  }

  private PracticeTask rock(Position.Bore place) {
    double growth = 1 + job.engine().bore().ctePerK() * blockKelvin;
    double slope =
        bores.get(place.cylinder() - 1).slope(place.depthMm(), directionDeg(place.axis()));
    return new PracticeTask.Rock(diameterMm(place) * growth, settingNowMm(), slope);
  }

  private double settingNowMm() {
    return job.setting().sizeMm() * (1 + job.setting().ctePerK() * settingKelvin);
  }

  /** What the wall's length at the ring leaves of the ring's own, each as warm as the block. */
  private double gapMm(Position.Gap place) {
    Ring ring = job.ring(place.ring()).orElseThrow();
    PracticeBore bore = bores.get(place.cylinder() - 1);
    double wallMm =
        bore.perimeterMm(place.depthMm()) * (1 + job.engine().bore().ctePerK() * blockKelvin);
    double ringMm =
        (bore.perimeterMm(ring.depthsMm().get(0)) - gapWhenNewMm(ring, place.cylinder()))
            * (1 + ring.material().ctePerK() * blockKelvin);
    return Math.max(0, wallMm - ringMm);
  }

  /** The ring's gap at 20 °C at the first of its depths: somewhere about the maker's limits. */
  private double gapWhenNewMm(Ring ring, int cylinder) {
    double share = -0.2 + 1.1 * random(cylinder, ring.name()).nextDouble();
    return Math.max(0.1, ring.gapMinMm() + share * (ring.gapMaxMm() - ring.gapMinMm()));
  }

  /** The ring lies a little tilted, and its highest point anywhere around. */
  private double ringDepthMm(Position.RingDepth place) {
    Random random = random(place.cylinder(), place.ring() + place.depthMm());
    double tiltMm = MOST_TILT_MM * random.nextDouble();
    double highestDeg = 360 * random.nextDouble();
    return place.depthMm() - tiltMm * Math.cos(Math.toRadians(place.clockDeg() - highestDeg));
  }

  private PracticeBore bore(int cylinder) {
    Engine engine = job.engine();
    Limits limits = job.limits();
    double lowMm = limits.boreMinMm() == null ? engine.nominalBoreMm() : limits.boreMinMm();
    double highMm = limits.boreMaxMm() == null ? lowMm + NEW_BORE_TOLERANCE_MM : limits.boreMaxMm();
    return PracticeBore.worn(random(cylinder, "bore"), lowMm, highMm, engine.strokeMm());
  }

  private Random random(int cylinder, String what) {
    return new Random(31 * (31 * seed + cylinder) + what.hashCode());
  }

  /** Named as the trade does: thrust at 0, pin at 90; other axes a quarter turn apart. */
  private double directionDeg(String axis) {
    if (axis.equals("thrust")) {
      return 0;
    }
    return axis.equals("pin") ? QUARTER_DEG : QUARTER_DEG * job.plan().axes().indexOf(axis);
  }
}
