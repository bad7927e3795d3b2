package boreledger.station.audit;

/** How many readings were computed again, and how many came out otherwise. */
final class Tally {
  private long recomputed;
  private long differing;

  void computed(boolean same) {
    recomputed++;
    differing += same ? 0 : 1;
  }

  long recomputed() {
    return recomputed;
  }

  long differing() {
    return differing;
  }
}
