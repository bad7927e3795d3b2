package boreledger.station.job.draft;

/** Why a text cannot be what its field takes; found without reading the job as a whole. */
public enum Fault {
  /** Nothing was typed where something is required. */
  MISSING,
  /** It is no number. */
  NO_NUMBER,
  /** It is no whole number. */
  NO_COUNT,
  /** Commas that may stand between numbers or within them. */
  WHICH_COMMA,
  /** A unit that does not belong here. */
  OTHER_UNIT
}
