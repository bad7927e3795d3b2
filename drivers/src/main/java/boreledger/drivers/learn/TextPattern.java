package boreledger.drivers.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The regular expression that finds a value among the text that stood around it. */
final class TextPattern {
  private static final String UNIT = "(?<unit>(?i:mm|inch|in|\"))";

  private final List<TextToken> tokens;
  private final boolean hasUnit;
  private final boolean unitFirst;
  private final boolean signBehind;
  private final SignWord word;
  private final String before;
  private final String after;

  /**
   * @param word what gives the numbers their sign; null when a sign does
   */
  TextPattern(List<TextToken> tokens, SignWord word) {
    this.tokens = tokens;
    this.word = word;
    hasUnit = !tokens.get(0).unit().isEmpty();
    unitFirst = tokens.get(0).unitFirst();
    before = TextShape.of(tokens.stream().map(t -> t.before().stripTrailing()).toList());
    signBehind = tokens.stream().anyMatch(TextToken::signAfter);
    Function<TextToken, String> rest = signBehind ? TextToken::afterMark : TextToken::after;
    after = TextShape.of(tokens.stream().map(rest).toList());
  }

  /** Whether it can tell the sign: text that changes too much has no place for the word. */
  boolean tellsSign() {
    return word == null || SignWord.hasPlace(before) != SignWord.hasPlace(after);
  }

  /** The expression, from the line's start to its end. */
  String regex() {
    String unitAhead = hasUnit && unitFirst ? UNIT + " *" : "";
    String unitBehind = hasUnit && !unitFirst ? " *" + UNIT : "";
    String regex = "(?s)^" + before + "\\s*" + unitAhead + value() + unitBehind + after + "$";
    return word == null ? regex : word.inPlace(regex);
  }

  private String value() {
    if (word != null) {
      return "(?<value>" + core() + ")";
    }
    return signBehind
        ? "(?<value>" + core() + ")" + signBehind()
        : "(?<value>" + sign() + " *" + core() + ")";
  }

  /** What the text is, in words. */
  String words() {
    TextToken first = tokens.get(0);
    String point = first.core().contains(",") ? "decimal comma" : "decimal point";
    String number = first.decimals() < 0 ? "a whole number" : "a number with a " + point;
    String ahead = SignWord.without(first.before());
    String label = ahead.isBlank() ? "" : " behind \"" + readable(ahead) + '"';
    return "text, "
        + number
        + label
        + (signBehind ? ", its sign behind it" : "")
        + (word != null ? ", a word for its sign" : "")
        + (hasUnit ? ", its unit beside it" : "");
  }

  /** What else stood in the lines. */
  List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (tokens.stream().map(TextToken::before).distinct().count() > 1 && !before.isBlank()) {
      remarks.add("What stands before the value changes from frame to frame; it is left out.");
    }
    if (tokens.stream().map(TextToken::after).distinct().count() > 1) {
      remarks.add("What stands behind the value changes from frame to frame; it is left out.");
    }
    if (tokens.stream().noneMatch(token -> token.sign().equals("-"))) {
      remarks.add("No negative value was seen: a minus sign is taken where a sign would stand,");
      remarks.add("right " + (signBehind ? "behind" : "before") + " the digits.");
    }
    if (word != null) {
      remarks.add(
          "\""
              + word.negative()
              + "\" beside the value makes it negative, \""
              + word.positive()
              + "\" does not.");
    }
    if (!hasUnit) {
      remarks.add("No unit is sent: keep the gauge in the unit it was learned in.");
    }
    return remarks;
  }

  private String sign() {
    return tokens.stream().allMatch(t -> !t.sign().isEmpty()) ? "[+-]" : "[+-]?";
  }

  /** A minus, or what was seen in its place; whatever may be there when that was not seen. */
  private String signBehind() {
    String others =
        tokens.stream()
            .filter(token -> !token.sign().equals("-"))
            .map(token -> token.mark().isEmpty() ? "" : "[" + token.mark() + "]")
            .distinct()
            .sorted(Comparator.reverseOrder())
            .collect(Collectors.joining("|"));
    boolean seen = tokens.stream().anyMatch(token -> !token.sign().equals("-"));
    return "(?:(?<negative>-)|" + (seen ? others : "[+ ]?") + ")";
  }

  private String core() {
    TextToken first = tokens.get(0);
    String exponent = tokens.stream().allMatch(TextToken::hasExponent) ? "[eE][+-]?\\d+" : "";
    if (first.decimals() < 0) {
      return "\\d+" + exponent;
    }
    boolean always = tokens.stream().allMatch(token -> token.wholeDigits() > 0);
    boolean even = tokens.stream().mapToInt(TextToken::decimals).distinct().count() == 1;
    // Without a unit beside it, another number of decimals means another unit.
    String decimals = even && !hasUnit ? "\\d{" + first.decimals() + "}" : "\\d+";
    String point = first.core().contains(",") ? "," : "\\.";
    return (always ? "\\d+" : "\\d*") + point + decimals + exponent;
  }

  private static String readable(String text) {
    return text.strip().replaceAll("[^ -~]", "?");
  }
}
