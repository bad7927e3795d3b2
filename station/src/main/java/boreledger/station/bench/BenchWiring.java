package boreledger.station.bench;

import boreledger.station.app.GaugingDesk;
import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import boreledger.station.gauging.GaugingEvent;
import java.util.function.Consumer;

/**
 * What the window is joined to.
 *
 * @param workshop the ledger
 * @param first what is gauged as soon as the window is there; null to begin in the room where a
 *     person chooses
 * @param practicePace how many times faster than life the practice gauge works
 * @param typed takes what a gauge types into the window
 * @param watcher told everything that the bench is told
 * @param opened takes the desk as soon as it is there, before anything is gauged
 */
public record BenchWiring(
    Workshop workshop,
    GaugingDesk.Work first,
    double practicePace,
    TypedValues typed,
    Consumer<GaugingEvent> watcher,
    Consumer<GaugingDesk> opened) {}
