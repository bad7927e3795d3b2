package boreledger.station.bench.ledger;

import boreledger.station.app.SessionLine;
import java.nio.file.Path;

/** A session that was chosen to be compared, and the ledger that it stands in. */
public record MarkedSession(Path ledger, SessionLine line) {
  boolean is(Path otherLedger, SessionLine other) {
    return ledger.equals(otherLedger) && line.id() == other.id();
  }
}
