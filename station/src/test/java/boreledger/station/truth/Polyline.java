package boreledger.station.truth;

/** Straight pieces between points, level before the first and after the last. */
record Polyline(double[] at, double[] value) {

  Polyline {
    if (at.length == 0 || at.length != value.length) {
      throw new IllegalArgumentException(at.length + " places, " + value.length + " values");
    }
    for (int i = 1; i < at.length; i++) {
      if (at[i] <= at[i - 1]) {
        throw new IllegalArgumentException("places do not rise at index " + i);
      }
    }
  }

  double at(double place) {
    int above = 0;
    while (above < at.length && at[above] < place) {
      above++;
    }
    if (above == 0) {
      return value[0];
    }
    if (above == at.length) {
      return value[at.length - 1];
    }
    double share = (place - at[above - 1]) / (at[above] - at[above - 1]);
    return value[above - 1] * (1 - share) + value[above] * share;
  }
}
