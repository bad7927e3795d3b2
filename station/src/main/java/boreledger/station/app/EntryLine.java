package boreledger.station.app;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.plan.Position;

/**
 * An entry of a session in a list.
 *
 * @param position where the reading stands by now; null for what is no reading
 * @param takenBack what took the reading back; null unless it was
 */
public record EntryLine(Entry entry, Position position, Standing standing, TakenBack takenBack) {}
