package boreledger.station.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Tells English sentences from German ones by the small words that every English sentence has and
 * no German one.
 */
public final class EnglishWords {
  private static final Set<String> ENGLISH =
      Set.of(
          "the",
          "of",
          "is",
          "are",
          "and",
          "not",
          "no",
          "its",
          "with",
          "were",
          "from",
          "for",
          "this",
          "that",
          "by",
          "at",
          "on",
          "to",
          "as",
          "be",
          "would",
          "where",
          "than",
          "read",
          "ring",
          "gap",
          "bore",
          "below",
          "deck",
          "limit",
          "budget",
          "frames",
          "seen",
          "needed",
          "axis",
          "depth",
          "deep",
          "gauged",
          "common",
          "practice",
          "temperature",
          "resolution",
          "repeatability",
          "gauge",
          "job",
          "maker's",
          "ring's",
          "closes",
          "file",
          "tightest");

  private EnglishWords() {}

  /** The English words of a text; empty when it is none. */
  public static List<String> in(String text) {
    return Arrays.stream(text.split("[^\\p{L}']+")).filter(ENGLISH::contains).toList();
  }
}
