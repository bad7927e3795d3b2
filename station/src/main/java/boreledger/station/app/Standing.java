package boreledger.station.app;

/** How an entry of a session stands. */
public enum Standing {
  /** A reading that counts. */
  IN_FORCE,
  /** A reading whose position was read again later. */
  READ_AGAIN,
  /** A reading that was taken back. */
  TAKEN_BACK,
  /** No reading. */
  NO_READING
}
