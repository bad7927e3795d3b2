package boreledger.station.bench.look;

import boreledger.station.app.Workshop;
import boreledger.station.results.JobResults;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableValue;

/**
 * What a room finds around it.
 *
 * @param workshop the ledger; it is asked in the background only, and another may be opened
 * @param results what the readings of the job mean, anew after each reading; null until known
 * @param appearance how the person wants the window
 * @param background runs what takes its time, one after the other
 * @param screen brings what came of it back onto the screen's thread
 * @param go goes to the room of an id
 */
public record Surroundings(
    ObjectProperty<Workshop> workshop,
    ObservableValue<JobResults> results,
    Appearance appearance,
    Executor background,
    Executor screen,
    Consumer<String> go) {}
