package boreledger.calc.rock;

/**
 * A record, the splines laid over it, and which of its samples count.
 *
 * @param used false where a sample is rejected
 */
record TiltProblem(RockTrace trace, SplineBasis basis, boolean[] used) {

  TiltProblem withUsed(boolean[] other) {
    return new TiltProblem(trace, basis, other);
  }

  int usedCount() {
    int n = 0;
    for (boolean u : used) {
      n += u ? 1 : 0;
    }
    return n;
  }
}
