package boreledger.drivers.practice;

/** What the practising hand is to do next. */
public sealed interface PracticeTask {
  /**
   * Rock the bore gauge in a bore, or on the setting ring.
   *
   * @param diameterMm the diameter there now, in millimetres
   * @param zeroSizeMm the size at which the gauge shows zero, in millimetres
   * @param slope how much wider the bore is per millimetre deeper, in millimetres per millimetre
   */
  record Rock(double diameterMm, double zeroSizeMm, double slope) implements PracticeTask {}

  /**
   * Let a gauge that types sizes type one.
   *
   * @param sizeMm the size there now, in millimetres
   */
  record Type(double sizeMm) implements PracticeTask {}
}
