package boreledger.drivers.practice;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * The hand: it carries the gauge to a place, puts it in, rocks it, takes it out, and shows it the
 * air for a moment; or lets a gauge that types sizes type one. Everything it does is a list of
 * frames with their times.
 */
final class PracticeHand {
  private static final double RESTS_S = 1.2;
  private static final double MOVING_MM_A_S = 6;
  private static final double TYPED_NOISE_MM = 0.002;

  private final long seed;
  private final double stepS;
  private final PracticeGauge gauge;
  private final Random airRandom;
  private Random random;
  private int visits;

  /**
   * One frame and when its last byte comes.
   *
   * @param tS in seconds on the line's clock
   */
  record Frame(double tS, byte[] ascii) {}

  /**
   * @param samplesPerS how often the streaming gauge sends
   */
  PracticeHand(long seed, double samplesPerS) {
    this.seed = seed;
    stepS = 1 / samplesPerS;
    airRandom = new Random(seed);
    random = airRandom;
    gauge = new PracticeGauge(airRandom);
  }

  /** All that a task brings, from reaching out to resting again. */
  List<Frame> visit(double startS, PracticeTask task) {
    // Of its own, so that it does not matter how long the hand waited before.
    random = new Random(31 * seed + ++visits);
    List<Frame> frames = frames(startS, task);
    random = airRandom;
    return frames;
  }

  private List<Frame> frames(double startS, PracticeTask task) {
    double reachedS = startS + RESTS_S + 0.8 * random.nextDouble();
    if (task instanceof PracticeTask.Type typed) {
      return List.of(typed(reachedS, typed.sizeMm()));
    }
    return rocked(startS, reachedS, (PracticeTask.Rock) task);
  }

  /** One value of the streaming gauge in free air. */
  Frame air(double tS) {
    return sent(tS + stepS, PracticeGauge.STOP_MM, 0);
  }

  private List<Frame> rocked(double startS, double reachedS, PracticeTask.Rock task) {
    List<Frame> frames = new ArrayList<>();
    double tS = startS;
    while (tS < reachedS) {
      tS = add(frames, air(tS));
    }
    Swings swings = new Swings(random);
    double offMm = 0.1 * random.nextGaussian();
    tS = move(frames, tS, PracticeGauge.STOP_MM, spanMm(task, swings, 0, offMm));
    double inS = tS;
    while (tS - inS < swings.lengthS()) {
      double spannedMm = spanMm(task, swings, tS + stepS - inS, offMm);
      tS = add(frames, sent(tS + stepS, spannedMm, PracticeGauge.glitchMm(random)));
    }
    double lastMm = spanMm(task, swings, swings.lengthS(), offMm);
    tS = move(frames, tS, lastMm, PracticeGauge.STOP_MM);
    double outS = tS;
    while (tS - outS < RESTS_S) {
      tS = add(frames, air(tS));
    }
    return frames;
  }

  /** The way in or out. */
  private double move(List<Frame> frames, double startS, double fromMm, double toMm) {
    double lastsS = Math.abs(toMm - fromMm) / MOVING_MM_A_S * (0.7 + 0.6 * random.nextDouble());
    double tS = startS;
    while (tS + stepS - startS < lastsS) {
      double part = (tS + stepS - startS) / lastsS;
      tS = add(frames, sent(tS + stepS, fromMm + part * (toMm - fromMm), 0));
    }
    return tS;
  }

  private static double spanMm(PracticeTask.Rock task, Swings swings, double sinceS, double offMm) {
    return PracticeGauge.spanMm(task, swings.tiltDeg(sinceS), offMm);
  }

  private static double add(List<Frame> frames, Frame frame) {
    frames.add(frame);
    return frame.tS();
  }

  private Frame sent(double tS, double spannedMm, double glitchMm) {
    return frame(tS, "%+.3f\r\n", gauge.showMm(tS, spannedMm, random) + glitchMm);
  }

  private Frame typed(double tS, double sizeMm) {
    return frame(tS, "%.3f mm\r\n", sizeMm + TYPED_NOISE_MM * random.nextGaussian());
  }

  private static Frame frame(double tS, String format, double mm) {
    String text = String.format(Locale.ROOT, format, mm);
    return new Frame(tS, text.getBytes(StandardCharsets.US_ASCII));
  }
}
