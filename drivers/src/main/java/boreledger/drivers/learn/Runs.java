package boreledger.drivers.learn;

import java.util.ArrayList;
import java.util.List;

/** Which shown value each frame belongs to. */
final class Runs {
  private Runs() {}

  /**
   * Frames and shown values laid side by side: one frame for each value, or runs of frames whose
   * number is equal.
   *
   * @param numbers what the frames hold, in order
   * @return for each frame the value shown; empty when runs and values do not pair up
   */
  static List<ShownValue> align(List<?> numbers, List<ShownValue> shown) {
    if (numbers.size() == shown.size()) {
      return shown;
    }
    List<ShownValue> changes = changes(shown);
    List<ShownValue> aligned = new ArrayList<>();
    int run = -1;
    for (int i = 0; i < numbers.size(); i++) {
      run += i == 0 || !numbers.get(i).equals(numbers.get(i - 1)) ? 1 : 0;
      if (run >= changes.size()) {
        return List.of();
      }
      aligned.add(changes.get(run));
    }
    return run == changes.size() - 1 ? aligned : List.of();
  }

  private static List<ShownValue> changes(List<ShownValue> shown) {
    List<ShownValue> changes = new ArrayList<>();
    for (ShownValue value : shown) {
      boolean same =
          !changes.isEmpty() && changes.get(changes.size() - 1).mm().compareTo(value.mm()) == 0;
      if (!same) {
        changes.add(value);
      }
    }
    return changes;
  }
}
