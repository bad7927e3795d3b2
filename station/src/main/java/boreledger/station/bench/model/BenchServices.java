package boreledger.station.bench.model;

import boreledger.station.bench.tone.Tones;

/** What the bench needs from the rest of the program. */
public record BenchServices(ResultsSource results, HeldAnswers answers, Tones tones) {}
