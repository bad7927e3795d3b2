package boreledger.station.bench;

import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.HeldAnswers;
import boreledger.station.bench.model.ResultsSource;
import java.util.function.Consumer;

/**
 * What the bench window is joined to.
 *
 * @param results asked in the background after each reading
 * @param answers told what a person answers to a held value
 * @param ready takes the model once the window is shown; called on the screen's thread, so it
 *     starts the run on a thread of its own and returns at once
 * @param closed called on the screen's thread when the window is closed, before {@link
 *     BenchApplication#show} returns
 */
public record BenchWiring(
    ResultsSource results, HeldAnswers answers, Consumer<BenchModel> ready, Runnable closed) {}
