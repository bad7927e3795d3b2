package boreledger.station.bench.model;

import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;

/** What the bench needs from the rest of the program. */
public record BenchServices(ResultsSource results, HeldAnswers answers, Tones tones, Voice voice) {}
