package boreledger.station.keeping;

import java.util.concurrent.CancellationException;

/** A person stopped the work. Nothing of it is left behind. */
public final class Stopped extends CancellationException {
  private static final long serialVersionUID = 1L;

  /** Says so in one line. */
  public Stopped() {
    super("stopped; nothing was written");
  }
}
