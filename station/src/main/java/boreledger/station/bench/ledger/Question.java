package boreledger.station.bench.ledger;

/** Something that takes its time and is asked in the background. */
@FunctionalInterface
interface Question<T> {
  /**
   * The answer.
   *
   * @throws Exception with a one-line message when there is none
   */
  T answer() throws Exception;
}
