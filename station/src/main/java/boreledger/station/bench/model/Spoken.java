package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sentences for the ear: short, and with units as they are pronounced. */
final class Spoken {
  private Spoken() {}

  /** Where to gauge now, or that nothing is left. */
  static String next(Sitting sitting) {
    return after(sitting, List.of());
  }

  /** Some sentences, and then where to gauge now. */
  static String after(Sitting sitting, List<String> sentences) {
    Place place = Place.of(sitting);
    return of(
        Stream.concat(sentences.stream(), Stream.of(place.title() + ", " + place.detail()))
            .toList());
  }

  /** Some sentences, each without its full stop. */
  static String of(List<String> sentences) {
    return sentences.stream().map(Spoken::sentence).collect(Collectors.joining(" "));
  }

  private static String sentence(String words) {
    return pronounced(words) + (words.endsWith("?") ? "" : ".");
  }

  private static String pronounced(String words) {
    return words
        .replaceAll("(?<=\\d) mm\\b", " " + BenchText.SPOKEN_MM.with())
        .replaceAll("(?<=\\d) in(?=[,.;:)]|$)", " " + BenchText.SPOKEN_IN.with())
        .replace("\u2212", BenchText.SPOKEN_MINUS.with() + " ");
  }
}
