package boreledger.station.bench.model;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How fast a sitting goes, by the times between its readings, such as 22 s.
 *
 * <p>The pace is the median of those times, pauses left out. A pause is a time that is more than
 * {@value #PAUSE} times as long as the lower median of all; common practice, no source. Nothing is
 * said of a sitting with fewer than {@value #FEWEST_READINGS} readings, and nothing while the two
 * or more times between them are not there because each was broken off.
 *
 * @param readings how many readings there were
 * @param lastS when the last reading came, in seconds on any clock that never runs back; null
 *     before the first, and after a break
 * @param timesS the times between readings in seconds, in order
 */
record Pace(int readings, Double lastS, List<Double> timesS) {
  private static final int FEWEST_READINGS = 3;
  private static final int FEWEST_TIMES = 2;
  private static final double PAUSE = 4;

  Pace {
    timesS = List.copyOf(timesS);
  }

  /** No reading yet. */
  static Pace none() {
    return new Pace(0, null, List.of());
  }

  /** The same with one more reading. */
  Pace reading(double nowS) {
    List<Double> more =
        lastS == null ? timesS : Stream.concat(timesS.stream(), Stream.of(nowS - lastS)).toList();
    return new Pace(readings + 1, nowS, more);
  }

  /** The same after something that is no work, such as a line that went away. */
  Pace broken() {
    return new Pace(readings, null, timesS);
  }

  /**
   * How long so many readings will take.
   *
   * @return seconds; empty when too little is known
   */
  OptionalDouble leftS(int openReadings) {
    if (readings < FEWEST_READINGS || timesS.size() < FEWEST_TIMES) {
      return OptionalDouble.empty();
    }
    List<Double> sorted = timesS.stream().sorted().toList();
    double typicalS = sorted.get((sorted.size() - 1) / 2);
    List<Double> work = sorted.stream().filter(each -> each <= PAUSE * typicalS).toList();
    double medianS = (work.get((work.size() - 1) / 2) + work.get(work.size() / 2)) / 2;
    return OptionalDouble.of(openReadings * medianS);
  }
}
