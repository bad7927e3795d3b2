package boreledger.station.bench.model;

import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.gauging.Wish;
import java.util.function.Consumer;

/**
 * What the bench needs from the rest of the program.
 *
 * @param wishes takes what a person asks for, on the screen's thread, and returns at once; what
 *     comes of it is told by an event
 */
public record BenchServices(
    ResultsSource results, Consumer<Wish> wishes, Tones tones, Voice voice) {}
