package boreledger.station.job.draft;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes what was typed into a field as a value of a TOML file. */
public final class TomlText {
  private static final int LONGEST_COUNT = 9;

  private TomlText() {}

  /** The items that a field gives: none when it is blank, one unless it takes several. */
  static List<String> items(Kind kind, String text) {
    if (text.isBlank()) {
      return List.of();
    }
    if (kind == Kind.TEXT) {
      return List.of(quoted(text));
    }
    if (kind == Kind.WORDS) {
      return Words.split(text).stream().map(TomlText::quoted).toList();
    }
    Typed typed = Numerals.read(kind, text);
    if (!typed.isUnderstood()) {
      // Written as it was typed, so that the reader of job files says what it expected there.
      return List.of(quoted(text));
    }
    return typed.numbers().stream().map(number -> number(kind, number)).toList();
  }

  /**
   * What a text will be in the file, several numbers with commas between them; empty when nothing
   * was typed.
   */
  public static String of(Kind kind, String text) {
    return String.join(", ", items(kind, text));
  }

  static String array(List<String> items) {
    return items.stream().collect(Collectors.joining(", ", "[", "]"));
  }

  static String number(Kind kind, BigDecimal number) {
    if (kind == Kind.COEFFICIENT) {
      return plain(number.movePointRight(6)) + "e-6";
    }
    String plain = plain(number);
    if (kind == Kind.COUNT) {
      return plain.length() > LONGEST_COUNT ? quoted(plain) : plain;
    }
    return plain.indexOf('.') < 0 ? plain + ".0" : plain;
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.chars()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
              } else if (Character.isISOControl(c)) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
              } else {
                quoted.append((char) c);
              }
            });
    return quoted.append('"').toString();
  }
}
