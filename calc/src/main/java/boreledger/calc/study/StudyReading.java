package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * One reading of a crossed study.
 *
 * @param part the part gauged, such as {@code liner 3}; not null
 * @param appraiser who gauged it; not null
 * @param trial the appraiser's how-manieth round over the parts, such as {@code 2}; not null
 * @param value what the gauge read; finite
 */
public record StudyReading(String part, String appraiser, String trial, double value) {
  /**
   * Checks the value.
   *
   * @throws ImpossibleInput when it is not finite
   */
  public StudyReading {
    Require.finite("reading of " + cell(part, appraiser, trial), value, "");
  }

  /** Names the reading in a message. */
  static String cell(String part, String appraiser, String trial) {
    return "part " + part + ", appraiser " + appraiser + ", trial " + trial;
  }
}
