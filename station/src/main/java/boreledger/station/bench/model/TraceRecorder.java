package boreledger.station.bench.model;

import boreledger.drivers.decoder.Sample;
import boreledger.station.bench.model.Trace.Point;
import boreledger.station.bench.words.BenchText;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Remembers the last seconds of samples. Samples that fall into the same 25 ms leave only their
 * smallest and their largest value, so that no gauge is too fast for it and no minimum is lost.
 */
final class TraceRecorder {
  static final double SPAN_S = 10;

  private static final double SLOT_S = 0.025;
  private static final double[] HEIGHTS_MM = {0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5};
  private static final double MARGIN = 0.12;

  private final double plausibleLowMm;
  private final double plausibleHighMm;
  private final DoubleFunction<String> words;
  private final Deque<Slot> slots = new ArrayDeque<>();
  private Point smallest;

  /**
   * A recorder that takes only values between two limits for the smallest one: a gauge in free air
   * shows no bore.
   *
   * @param words a value as text
   */
  TraceRecorder(double plausibleLowMm, double plausibleHighMm, DoubleFunction<String> words) {
    this.plausibleLowMm = plausibleLowMm;
    this.plausibleHighMm = plausibleHighMm;
    this.words = words;
  }

  void add(Sample sample) {
    Point point = new Point(sample.tS(), sample.valueMm());
    long number = (long) Math.floor(point.tS() / SLOT_S);
    if (!slots.isEmpty() && slots.getLast().number() == number) {
      slots.addLast(slots.removeLast().with(point));
    } else {
      slots.addLast(new Slot(number, point, point));
    }
    while (slots.getFirst().number() * SLOT_S < point.tS() - SPAN_S) {
      slots.removeFirst();
    }
    if (isPlausible(point) && (smallest == null || point.valueMm() < smallest.valueMm())) {
      smallest = point;
    }
  }

  /** The next sample begins a new reading. */
  void restart() {
    smallest = null;
  }

  Trace trace() {
    if (slots.isEmpty()) {
      return Trace.none();
    }
    List<Point> points = new ArrayList<>();
    slots.forEach(slot -> slot.addTo(points));
    double toS = points.get(points.size() - 1).tS();
    // A gauge in free air must not flatten what it shows in the bore.
    List<Point> inBore = points.stream().filter(this::isPlausible).toList();
    DoubleSummaryStatistics range =
        (inBore.isEmpty() ? points : inBore)
            .stream().mapToDouble(Point::valueMm).summaryStatistics();
    double floorMm = range.getMin();
    double heightMm = height(range.getMax() - floorMm);
    return new Trace(
        points,
        toS - SPAN_S,
        SPAN_S,
        floorMm - MARGIN * heightMm,
        floorMm + heightMm,
        smallest,
        smallest == null
            ? BenchText.TRACE_NO_SMALLEST.with()
            : BenchText.TRACE_SMALLEST.with(words.apply(smallest.valueMm())));
  }

  /** Fixed steps, so that the picture does not breathe with every sample. */
  private static double height(double rangeMm) {
    for (double step : HEIGHTS_MM) {
      if (rangeMm <= step) {
        return step;
      }
    }
    return rangeMm;
  }

  private boolean isPlausible(Point point) {
    return point.valueMm() >= plausibleLowMm && point.valueMm() <= plausibleHighMm;
  }

  private record Slot(long number, Point lowest, Point highest) {
    Slot with(Point point) {
      return new Slot(
          number,
          point.valueMm() < lowest.valueMm() ? point : lowest,
          point.valueMm() > highest.valueMm() ? point : highest);
    }

    void addTo(List<Point> points) {
      boolean lowFirst = lowest.tS() <= highest.tS();
      points.add(lowFirst ? lowest : highest);
      if (lowest != highest) {
        points.add(lowFirst ? highest : lowest);
      }
    }
  }
}
