package boreledger.station.results;

import boreledger.calc.ring.ClockDepth;
import boreledger.calc.ring.RingTilt;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.plan.Position;
import boreledger.station.session.StoredSession;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a ring was from square, from its depths around the clock. */
record RingTilts(Job job, Ring ring, StoredSession session) {
  /**
   * The tilt of the ring in a cylinder at one of its depths; empty until every clock position of
   * the plan was read there.
   *
   * @param boreMm the bore there, near enough
   */
  Optional<RingTilt> at(int cylinder, double depthMm, double boreMm) {
    List<ClockDepth> depths = new ArrayList<>();
    for (double clockDeg : job.plan().clockDeg()) {
      session
          .at(new Position.RingDepth(cylinder, ring.name(), depthMm, clockDeg))
          .map(stored -> new ClockDepth(clockDeg, stored.reading().valueMm()))
          .ifPresent(depths::add);
    }
    return depths.size() == job.plan().clockDeg().size()
        ? Optional.of(RingTilt.of(boreMm, depths))
        : Optional.empty();
  }
}
