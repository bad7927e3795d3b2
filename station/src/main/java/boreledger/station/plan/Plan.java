package boreledger.station.plan;

import boreledger.drivers.capture.Measure;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The positions of a session in the order they are gauged: cylinder by cylinder, from the deck
 * down, then axis by axis or clock position by clock position. A bore session begins and ends on
 * the setting ring.
 */
public final class Plan {
  private Plan() {}

  /**
   * The positions for one measure.
   *
   * @param ring the ring to gauge; null for {@link Measure#BORE}
   */
  public static List<Position> of(Job job, Measure measure, Ring ring) {
    List<Position> positions = new ArrayList<>();
    if (measure == Measure.BORE) {
      positions.add(Position.SettingCheck.OPENING);
    }
    for (int cylinder = 1; cylinder <= job.engine().cylinders(); cylinder++) {
      positions.addAll(ofCylinder(job, cylinder, measure, ring));
    }
    if (measure == Measure.BORE) {
      positions.add(Position.SettingCheck.CLOSING);
    }
    return List.copyOf(positions);
  }

  private static List<Position> ofCylinder(Job job, int cylinder, Measure measure, Ring ring) {
    return switch (measure) {
      case BORE -> bores(job, cylinder);
      case GAP -> gaps(cylinder, ring);
      case RING_DEPTH -> ringDepths(job, cylinder, ring);
    };
  }

  private static List<Position> bores(Job job, int cylinder) {
    List<Position> positions = new ArrayList<>();
    for (double depthMm : job.plan().depthsMm()) {
      for (String axis : job.plan().axes()) {
        positions.add(new Position.Bore(cylinder, depthMm, axis));
      }
    }
    return positions;
  }

  private static List<Position> gaps(int cylinder, Ring ring) {
    List<Position> positions = new ArrayList<>();
    for (double depthMm : ring.depthsMm()) {
      positions.add(new Position.Gap(cylinder, ring.name(), depthMm));
    }
    return positions;
  }

  private static List<Position> ringDepths(Job job, int cylinder, Ring ring) {
    List<Position> positions = new ArrayList<>();
    for (double depthMm : ring.depthsMm()) {
      for (double clockDeg : job.plan().clockDeg()) {
        positions.add(new Position.RingDepth(cylinder, ring.name(), depthMm, clockDeg));
      }
    }
    return positions;
  }
}
