package boreledger.station.app;

import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Finds a place as a person names it: {@code cylinder 2, 60 mm, pin} or {@code cylinder 2, top, 60
 * mm}. Words that every place has may be left out, as may capitals and zeros behind the point.
 */
final class PlaceWords {
  private static final Set<String> LEFT_OUT =
      Set.of("cylinder", "mm", "below", "the", "deck", "axis", "ring", "gap", "near", "clock");

  private PlaceWords() {}

  /**
   * The place.
   *
   * @throws UsageProblem if the plan has none that is named so, or several
   */
  static Position find(String words, List<Position> plan) throws UsageProblem {
    List<String> named = told(words);
    List<Position> found =
        plan.stream()
            .filter(position -> !(position instanceof SettingCheck))
            .filter(position -> told(position.words()).equals(named))
            .toList();
    if (found.size() != 1) {
      throw new UsageProblem(
          (found.isEmpty() ? "no place" : "several places")
              + " \""
              + words
              + "\" in the session's plan, which has such as "
              + example(plan));
    }
    return found.get(0);
  }

  private static String example(List<Position> plan) {
    return plan.stream()
        .filter(position -> !(position instanceof SettingCheck))
        .map(position -> '"' + position.words() + '"')
        .reduce((earlier, later) -> later)
        .orElse("none");
  }

  private static List<String> told(String words) {
    return Arrays.stream(words.toLowerCase(Locale.ROOT).split("[\\s,°]+"))
        .filter(word -> !word.isEmpty() && !LEFT_OUT.contains(word))
        .map(PlaceWords::plain)
        .toList();
  }

  /** 60.0 and 60 are one depth. */
  private static String plain(String word) {
    return word.matches("\\d+\\.\\d+") ? word.replaceAll("\\.?0+$", "") : word;
  }
}
