package boreledger.drivers.profile;

/**
 * What a maximum permissible error may already include, so that a budget does not count it twice.
 */
public enum MaxErrorPart {
  /** The step of the last digit. */
  RESOLUTION,
  /** The scatter of repeated readings. */
  REPEATABILITY
}
