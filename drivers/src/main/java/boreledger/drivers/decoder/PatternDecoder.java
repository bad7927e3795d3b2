package boreledger.drivers.decoder;

import boreledger.drivers.file.OneLine;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a frame of ASCII text by a regular expression with the groups {@code value} and, perhaps,
 * {@code unit}.
 *
 * <pre>
 * pattern = '^(?&lt;value&gt;[+-]?\d+\.\d+)(?:\s*(?&lt;unit&gt;mm|in))?$'
 *
 *   offset  0  1  2  3  4  5  6  7  8
 *   byte   2d 30 2e 30 30 30 35 69 6e
 *   text    -  0  .  0  0  0  5  i  n     -0.0005 in, that is -0.0127 mm
 *           value                unit
 * </pre>
 *
 * <ul>
 *   <li>The value is a decimal number as {@link DecimalText} reads it; inches become millimetres
 *       exactly, before the one rounding to a double.
 *   <li>A unit that is missing or empty is the profile's; else it is {@code mm}, {@code in}, {@code
 *       inch} or {@code "}, in either case.
 *   <li>Rejected are an empty frame, a byte that is not ASCII, text without a match or with two
 *       matches that hold a value, a number that cannot be read, another unit, a length beyond a
 *       kilometre, and a pattern that takes too many steps.
 * </ul>
 */
final class PatternDecoder implements Decoder {
  private static final Map<String, LengthUnit> UNITS =
      Map.of("mm", LengthUnit.MM, "in", LengthUnit.IN, "inch", LengthUnit.IN, "\"", LengthUnit.IN);
  private static final BigDecimal LONGEST_MM = new BigDecimal(1_000_000);

  private final Pattern pattern;
  private final boolean hasUnit;
  private final LengthUnit unsent;

  PatternDecoder(DecodeSpec.ByPattern spec, LengthUnit unsent) {
    pattern = spec.pattern();
    hasUnit = spec.hasGroup("unit");
    this.unsent = unsent;
  }

  @Override
  public Decoded decode(FrameEvent.Frame frame) {
    try {
      return sample(frame, ascii(frame.payload()));
    } catch (Unreadable e) {
      return new Rejected(frame.tS(), frame.raw(), e.getMessage());
    } catch (BoundedText.TooManySteps | StackOverflowError e) {
      // The engine recurses for some patterns, so a long frame can exhaust the stack as well.
      return new Rejected(frame.tS(), frame.raw(), "the pattern takes too many steps on it");
    }
  }

  private Sample sample(FrameEvent.Frame frame, String text) throws Unreadable {
    Matcher matcher = pattern.matcher(new BoundedText(text));
    if (!findValue(matcher)) {
      throw new Unreadable(quoted(text) + " does not match the pattern");
    }
    String value = matcher.group("value");
    String unitText = hasUnit ? matcher.group("unit") : null;
    if (findValue(matcher)) {
      throw new Unreadable(quoted(text) + " holds more than one value");
    }
    boolean unitSent = unitText != null && !unitText.isBlank();
    LengthUnit unit = unitSent ? unit(unitText.strip()) : unsent;
    BigDecimal valueMm = unit.toMm(DecimalText.parse(value));
    if (valueMm.abs().compareTo(LONGEST_MM) > 0) {
      throw new Unreadable(quoted(text) + " is beyond a kilometre");
    }
    // Adding zero makes a zero of what is too small for a double, and never a negative one.
    double roundedMm = valueMm.doubleValue() + 0.0;
    return new Sample(frame.tS(), frame.raw(), roundedMm, unit, unitSent);
  }

  private static String ascii(Bytes payload) throws Unreadable {
    if (payload.size() == 0) {
      throw new Unreadable("empty frame");
    }
    for (int i = 0; i < payload.size(); i++) {
      if (payload.at(i) > 127) {
        throw new Unreadable(String.format("byte %d is %02x, not ASCII", i + 1, payload.at(i)));
      }
    }
    return new String(payload.toArray(), StandardCharsets.US_ASCII);
  }

  /** Finds the next match whose value is not empty. */
  private static boolean findValue(Matcher matcher) {
    while (matcher.find()) {
      if (matcher.start("value") < matcher.end("value")) {
        return true;
      }
    }
    return false;
  }

  private static LengthUnit unit(String text) throws Unreadable {
    LengthUnit unit = UNITS.get(text.toLowerCase(Locale.ROOT));
    if (unit == null) {
      throw new Unreadable("unit " + quoted(text) + " is neither mm nor in");
    }
    return unit;
  }

  private static String quoted(String text) {
    return '"' + OneLine.of(text) + '"';
  }
}
