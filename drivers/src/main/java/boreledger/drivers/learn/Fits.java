package boreledger.drivers.learn;

import boreledger.drivers.learn.Scales.Scale;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Every way in which the numbers of a field give the values shown. */
final class Fits {
  private static final BigDecimal FLOAT_ERROR = new BigDecimal("1e-6");
  private static final List<BigDecimal> FLOAT_STEPS_MM =
      List.of(
          BigDecimal.ONE, new BigDecimal("25.4"), new BigDecimal(1000), new BigDecimal("0.001"));
  private static final int MOST_FLAG_VALUES = 4;

  private final List<Bytes> frames;
  private final Field field;
  private final List<BigDecimal> numbers;
  private final List<ShownValue> shown;

  /**
   * @param numbers the field's number in each frame
   * @param shown the value shown with each frame, its sign left out where the number has none
   */
  Fits(List<Bytes> frames, Field field, List<BigDecimal> numbers, List<ShownValue> shown) {
    this.frames = frames;
    this.field = field;
    this.numbers = numbers;
    this.shown = shown;
  }

  /** One worth for all frames, or else one for those in millimetres and one for those in inches. */
  List<Fit> all(Set<Integer> leftOut) {
    List<Fit> fits = new ArrayList<>();
    steps(numbers, shown).forEach(step -> fits.add(new Fit(step.mm(), null, null, step.exact())));
    return fits.isEmpty() ? inTwoUnits(leftOut) : fits;
  }

  private List<Fit> inTwoUnits(Set<Integer> leftOut) {
    List<Fit> fits = new ArrayList<>();
    Set<List<Boolean>> tried = new HashSet<>();
    for (int at = 0; at < frames.get(0).size(); at++) {
      if (leftOut.contains(at) || field.ownBits(at) == 0xff || !isFlags(at)) {
        continue;
      }
      for (int bit = 1; bit < 0x100; bit <<= 1) {
        List<Boolean> isSet = column(at, bit & ~field.ownBits(at));
        List<Boolean> isUnset = isSet.stream().map(set -> !set).toList();
        for (List<Boolean> inch : List.of(isSet, isUnset)) {
          Bits bits = Bits.telling(frames, at, field.ownBits(at), inch);
          if (inch.contains(true) && inch.contains(false) && tried.add(keyed(at, inch))) {
            split(inch, bits, fits);
          }
        }
      }
    }
    return fits;
  }

  private void split(List<Boolean> inch, Bits bits, List<Fit> fits) {
    List<ShownValue> shownMm = chosen(shown, inch, false);
    if (Sizes.differentFromZero(shownMm) < 2) {
      return;
    }
    for (Scale mm : steps(chosen(numbers, inch, false), shownMm)) {
      for (Scale in : steps(chosen(numbers, inch, true), chosen(shown, inch, true))) {
        BigDecimal stepIn =
            in.mm().divide(LengthUnit.IN.toMm(BigDecimal.ONE), MathContext.DECIMAL64);
        if (stepIn.stripTrailingZeros().precision() == 1) {
          fits.add(new Fit(mm.mm(), stepIn.stripTrailingZeros(), bits, mm.exact() && in.exact()));
        }
      }
    }
  }

  private List<Scale> steps(List<BigDecimal> counts, List<ShownValue> values) {
    if (field.coding() != Field.Coding.FLOAT) {
      return Scales.fitting(counts, values);
    }
    return FLOAT_STEPS_MM.stream()
        .filter(step -> isFloatFor(step, counts, values))
        .map(step -> new Scale(step, true))
        .toList();
  }

  private static boolean isFloatFor(
      BigDecimal stepMm, List<BigDecimal> counts, List<ShownValue> values) {
    for (int i = 0; i < counts.size(); i++) {
      BigDecimal valueMm = values.get(i).mm();
      BigDecimal offMm = counts.get(i).multiply(stepMm).subtract(valueMm).abs();
      BigDecimal allowedMm = valueMm.abs().multiply(FLOAT_ERROR).max(values.get(i).roundingMm());
      if (offMm.compareTo(allowedMm) > 0) {
        return false;
      }
    }
    return Sizes.differentFromZero(values) > 0;
  }

  /** Whether a byte's bits beside the number take few values, as flags do and counters do not. */
  private boolean isFlags(int at) {
    int beside = 0xff & ~field.ownBits(at);
    return frames.stream().mapToInt(frame -> frame.at(at) & beside).distinct().count()
        <= MOST_FLAG_VALUES;
  }

  private List<Boolean> column(int at, int bit) {
    return frames.stream().map(frame -> (frame.at(at) & bit) != 0).toList();
  }

  private static List<Boolean> keyed(int at, List<Boolean> column) {
    List<Boolean> key = new ArrayList<>(column);
    for (int bit = 1; bit < 0x1000; bit <<= 1) {
      key.add((at & bit) != 0);
    }
    return key;
  }

  private static <T> List<T> chosen(List<T> all, List<Boolean> inch, boolean wanted) {
    List<T> chosen = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (inch.get(i) == wanted) {
        chosen.add(all.get(i));
      }
    }
    return chosen;
  }
}
