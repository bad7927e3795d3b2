package boreledger.station.job.draft;

/** What is wrong with a field. */
public sealed interface Problem {
  /** What was typed cannot stand there, whatever the rest of the job says. */
  record Mistyped(Fault fault) implements Problem {}

  /**
   * The reader of job files refuses it.
   *
   * @param words what was found and what was expected, without a place
   */
  record Refused(String words) implements Problem {}
}
