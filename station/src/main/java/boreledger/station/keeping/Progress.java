package boreledger.station.keeping;

/** Told now and then how far some long work is. */
@FunctionalInterface
public interface Progress {
  /** Nobody looks on. */
  Progress UNWATCHED = done -> {};

  /**
   * So much is done.
   *
   * @param done readings or entries
   * @throws Stopped if the work is to end here
   */
  void passed(long done);
}
