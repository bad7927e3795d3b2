package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import java.util.ArrayList;
import java.util.List;

/** Samples between two boundaries, in which one reading may lie. */
final class RockRun {
  private static final int FRAGMENT_SAMPLES = 5;
  private static final double FRAGMENT_S = 0.5;

  private final List<Leveled> content = new ArrayList<>();
  private final Double leftFloorMm;
  private boolean fromAir;
  private double floorMm = Double.POSITIVE_INFINITY;
  private double topMm = Double.NEGATIVE_INFINITY;
  private int plateauSize;

  private RockRun(boolean fromAir, Double leftFloorMm) {
    this.fromAir = fromAir;
    this.leftFloorMm = leftFloorMm;
  }

  /** A run at the start of the stream, or after silence. */
  static RockRun afterSilence() {
    return new RockRun(false, null);
  }

  /**
   * A run after leaving a bore.
   *
   * @param leftFloorMm the lowest level there, when it was left by going far above it; else null
   */
  static RockRun afterAir(Double leftFloorMm) {
    return new RockRun(true, leftFloorMm);
  }

  /** Adds a sample; a new lowest level takes away what lies before the last level far above it. */
  void add(Leveled next, double farMm) {
    content.add(next);
    topMm = Math.max(topMm, next.levelMm());
    if (next.levelMm() < floorMm) {
      floorMm = next.levelMm();
      int far = content.size() - 1;
      while (far >= 0 && content.get(far).levelMm() <= floorMm + farMm) {
        far--;
      }
      dropFirst(far + 1);
      fromAir |= far >= 0;
    }
  }

  /** Notes that all of it is a plateau, of which only the end needs keeping. */
  void isPlateauSoFar(Plateau plateau) {
    dropFirst(plateau.spare(content));
    plateauSize = content.size();
  }

  /** Takes the samples from {@code start} away into a run of their own. */
  RockRun splitAt(int start) {
    RockRun rest = afterAir(null);
    List<Leveled> tail = content.subList(start, content.size());
    tail.forEach(next -> rest.add(next, Double.POSITIVE_INFINITY));
    tail.clear();
    return rest;
  }

  /** The samples of the reading in it: without air before it, and without the ways in and out. */
  List<Sample> reading() {
    boolean air = plateauSize > 0 && levelOfPlateauMm() > floorMm + Plateau.WELL_ABOVE_MM;
    List<Leveled> within = content.subList(air ? plateauSize : 0, content.size());
    return RockTrim.trim(within).stream().map(Leveled::sample).toList();
  }

  /** Whether it is so short that it could be a bit of the way in or out. */
  boolean isFragment() {
    double lengthS = content.get(size() - 1).sample().tS() - content.get(0).sample().tS();
    return size() < FRAGMENT_SAMPLES || lengthS < FRAGMENT_S;
  }

  boolean isEmpty() {
    return content.isEmpty();
  }

  int size() {
    return content.size();
  }

  List<Leveled> content() {
    return content;
  }

  List<Sample> samples() {
    return content.stream().map(Leveled::sample).toList();
  }

  boolean cameFromAir() {
    return fromAir;
  }

  /** The lowest level of the bore that was left for this run by going far above it; or null. */
  Double leftFloorMm() {
    return leftFloorMm;
  }

  double floorMm() {
    return floorMm;
  }

  double topMm() {
    return topMm;
  }

  double medianMm() {
    return Levels.of(content).medianMm();
  }

  private double levelOfPlateauMm() {
    return content.get(plateauSize - 1).levelMm();
  }

  private void dropFirst(int count) {
    content.subList(0, count).clear();
    plateauSize = Math.max(0, plateauSize - count);
    if (count > 0) {
      topMm = content.stream().mapToDouble(Leveled::levelMm).max().orElseThrow();
    }
  }
}
