package boreledger.station.bench.model;

import boreledger.station.plan.Position;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults.GapResult;
import java.util.Optional;
import java.util.stream.Stream;

/** What was computed for a position. */
record Computed(JobResults results) {
  /** Whether there is a value. */
  boolean has(Position position) {
    return valueMm(position).isPresent();
  }

  /** A bore's diameter or a gap in millimetres; empty for anything else and while not known. */
  Optional<Double> valueMm(Position position) {
    if (position instanceof Position.Bore bore) {
      return diameterMm(bore);
    }
    return position instanceof Position.Gap gap ? gapMm(gap) : Optional.empty();
  }

  private Optional<Double> diameterMm(Position.Bore bore) {
    return cylinder(bore.cylinder())
        .flatMap(each -> each.bore().positions().stream())
        .filter(each -> each.depthMm() == bore.depthMm() && each.axis().equals(bore.axis()))
        .findFirst()
        .map(PositionResult::diameterMm);
  }

  private Optional<Double> gapMm(Position.Gap gap) {
    return cylinder(gap.cylinder())
        .flatMap(each -> each.rings().stream())
        .filter(each -> each.ring().equals(gap.ring()))
        .flatMap(each -> each.gaps().stream())
        .filter(each -> each.depthMm() == gap.depthMm())
        .findFirst()
        .map(GapResult::measuredMm);
  }

  private Stream<CylinderResults> cylinder(int number) {
    return results.cylinders().stream().filter(each -> each.cylinder() == number);
  }
}
