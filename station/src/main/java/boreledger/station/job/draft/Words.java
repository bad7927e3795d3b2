package boreledger.station.job.draft;

import java.util.Arrays;
import java.util.List;

/** Names typed one after the other, between commas or semicolons. */
final class Words {
  private Words() {}

  static List<String> split(String text) {
    return Arrays.stream(text.split("[;,]"))
        .map(String::strip)
        .filter(word -> !word.isEmpty())
        .toList();
  }
}
