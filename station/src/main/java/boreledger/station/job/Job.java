package boreledger.station.job;

import java.util.List;
import java.util.Optional;

/**
 * One engine on the bench, as its job file describes it: lengths in millimetres, temperatures in
 * degrees Celsius, expansion coefficients per kelvin.
 *
 * @param source the file's name and exact text, kept in the ledger
 * @param limits every limit that the file leaves out is null
 * @param rings the compression rings and oil rails, in the file's order; may be empty
 * @param pistons measured pistons; may be empty
 * @param ringMarks marks of physical rings; may be empty
 */
public record Job(
    JobSource source,
    String name,
    DisplayUnit displayUnit,
    Engine engine,
    Limits limits,
    GaugingOrder plan,
    Setting setting,
    List<Ring> rings,
    Running running,
    List<Piston> pistons,
    List<RingMark> ringMarks,
    InputUncertainty uncertainty) {
  /** Takes copies of the lists. */
  public Job {
    rings = List.copyOf(rings);
    pistons = List.copyOf(pistons);
    ringMarks = List.copyOf(ringMarks);
  }

  /** The ring of a name. */
  public Optional<Ring> ring(String ringName) {
    return rings.stream().filter(ring -> ring.name().equals(ringName)).findFirst();
  }

  /** The smallest bore, in millimetres, that a reading near the nominal can give. */
  public double smallestBoreMm() {
    return engine.nominalBoreMm() - 0.5;
  }

  /** The largest bore, in millimetres, that a reading near the nominal can give. */
  public double largestBoreMm() {
    double oversizeMm = limits.oversizesMm().stream().mapToDouble(mm -> mm).max().orElse(0);
    return engine.nominalBoreMm() + oversizeMm + 1;
  }
}
