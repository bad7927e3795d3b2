package boreledger.station.bench.jobform;

import boreledger.station.bench.words.JobFormText;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Numerals;
import boreledger.station.job.draft.TomlText;
import boreledger.station.job.draft.Typed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** Between what stands in a draft and what a person sees and types in the unit they chose. */
record Rendering(Kind kind, DisplayUnit unit) {
  private static final BigDecimal INCH_MM = new BigDecimal("25.4");
  private static final int INCH_DECIMALS = 6;
  private static final String INCH = " in";

  /**
   * What a field shows: lengths in the unit, millimetres exactly, inches to six decimals. What is
   * not understood is shown as it was typed.
   */
  String shown(String draftText) {
    if (!kind.isLength()) {
      return draftText;
    }
    Typed typed = Numerals.read(kind, draftText);
    return typed.isUnderstood()
        ? typed.numbers().stream().map(this::number).collect(Collectors.joining("; "))
        : draftText;
  }

  /** What goes into the draft for what was typed: a length without a unit is in the shown one. */
  String draftText(String typedText) {
    boolean takesUnit = kind.isLength() && unit == DisplayUnit.IN && !typedText.isBlank();
    if (!takesUnit) {
      return typedText;
    }
    Typed typed = Numerals.read(kind, typedText);
    boolean isBare = typed.isUnderstood() && !typed.hasUnit();
    return isBare ? typedText.strip().replaceAll("[;,]$", "") + INCH : typedText;
  }

  /** What is to be said about the file when it will hold something else; empty when nothing is. */
  String note(String draftText, String typedText) {
    if (!kind.isNumber() || !Numerals.read(kind, draftText).isUnderstood()) {
      return "";
    }
    String inFile = TomlText.of(kind, draftText);
    if (inFile.replaceAll("\\.0\\b", "").equals(sameLook(typedText))) {
      return "";
    }
    return (kind.isLength() ? JobFormText.IN_FILE_MM : JobFormText.IN_FILE).with(inFile);
  }

  /** The unit beside a field; empty where there is none, or where one was typed. */
  String unitBeside(String typedText) {
    return kind.isNumber() && Numerals.read(kind, typedText).hasUnit() ? "" : symbol();
  }

  /** The unit that a number without one has; empty where there is none. */
  String symbol() {
    return switch (kind) {
      case LENGTH, LENGTHS -> unit.symbol();
      case ANGLES -> "\u00b0";
      case CELSIUS -> "\u00b0C";
      case KELVIN -> "K";
      case COEFFICIENT -> JobFormText.UNIT_COEFFICIENT.with();
      default -> "";
    };
  }

  /** Digits that differ in trailing zeros and separators alone need no explaining. */
  private static String sameLook(String typedText) {
    return typedText
        .strip()
        .replaceAll("\\s*;\\s*|\\s+|,\\s+", ", ")
        .replaceAll("(\\.\\d*?)0+(?!\\d)", "$1")
        .replaceAll("\\.(?!\\d)", "");
  }

  private String number(BigDecimal mm) {
    BigDecimal number =
        unit == DisplayUnit.IN ? mm.divide(INCH_MM, INCH_DECIMALS, RoundingMode.HALF_UP) : mm;
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
