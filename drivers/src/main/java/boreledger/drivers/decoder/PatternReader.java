package boreledger.drivers.decoder;

import boreledger.drivers.file.OneLine;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a frame of ASCII text by a regular expression with the groups {@code value} and, perhaps,
 * {@code unit}, {@code negative} and those of the flags.
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
 *   <li>The value is a decimal number as {@link DecimalText} reads it.
 *   <li>A unit that is missing or empty is the profile's; else it is {@code mm}, {@code in}, {@code
 *       inch} or {@code "}, in either case.
 *   <li>A group {@code negative} that is not empty makes the value negative, for gauges whose sign
 *       is not right before the digits, or is a letter or a word: {@code
 *       ^(?<value>\d+\.\d+)(?:(?<negative>-)|\+)$}.
 *   <li>A flag's group that is not empty raises the flag; one that means no value at all need not
 *       come with one.
 *   <li>Rejected are an empty frame, a byte that is not ASCII, text without a match or with two
 *       matches that hold a value, a value with a sign of its own beside {@code negative}, a number
 *       that cannot be read, another unit, and a pattern that takes too many steps.
 * </ul>
 */
final class PatternReader implements NumberReader {
  private static final Map<String, LengthUnit> UNITS =
      Map.of("mm", LengthUnit.MM, "in", LengthUnit.IN, "inch", LengthUnit.IN, "\"", LengthUnit.IN);

  private final Pattern pattern;
  private final boolean hasUnit;
  private final boolean hasNegative;
  private final Set<Flag> flags = EnumSet.noneOf(Flag.class);

  PatternReader(DecodeSpec.ByPattern spec) {
    pattern = spec.pattern();
    hasUnit = spec.hasGroup("unit");
    hasNegative = spec.hasGroup("negative");
    for (Flag flag : Flag.values()) {
      if (spec.hasGroup(flag.groupName())) {
        flags.add(flag);
      }
    }
  }

  @Override
  public SentNumber read(FrameEvent.Frame frame, LengthUnit bitUnit) throws Unreadable {
    try {
      return number(AsciiText.of(frame.payload()));
    } catch (BoundedText.TooManySteps | StackOverflowError e) {
      // The engine recurses for some patterns, so a long frame can exhaust the stack as well.
      throw new Unreadable("the pattern takes too many steps on it");
    }
  }

  private SentNumber number(String text) throws Unreadable {
    Matcher matcher = pattern.matcher(new BoundedText(text));
    if (!findValue(matcher)) {
      throw new Unreadable(quoted(text) + " does not match the pattern");
    }
    String value = matcher.group("value");
    String unitText = hasUnit ? matcher.group("unit") : null;
    boolean negative = hasNegative && matcher.start("negative") < matcher.end("negative");
    Set<Flag> raised = raised(matcher);
    if (findValue(matcher)) {
      throw new Unreadable(quoted(text) + " holds more than one value");
    }
    LengthUnit unit = unitText == null || unitText.isBlank() ? null : unit(unitText.strip());
    return new SentNumber(quoted(text), signed(value, negative), unit, raised);
  }

  private static BigDecimal signed(String value, boolean negative) throws Unreadable {
    BigDecimal number = DecimalText.parse(value);
    if (negative && value.strip().matches("[+-].*")) {
      throw new Unreadable(quoted(value.strip()) + " has a sign of its own and another");
    }
    return negative ? number.negate() : number;
  }

  /** Finds the next match whose value is not empty. */
  private boolean findValue(Matcher matcher) throws Unreadable {
    while (matcher.find()) {
      if (matcher.start("value") < matcher.end("value")) {
        return true;
      }
      if (raised(matcher).contains(Flag.OUT_OF_RANGE)) {
        throw new Unreadable(Flag.OUT_OF_RANGE.meaning());
      }
    }
    return false;
  }

  private Set<Flag> raised(Matcher matcher) {
    Set<Flag> raised = EnumSet.noneOf(Flag.class);
    for (Flag flag : flags) {
      if (matcher.start(flag.groupName()) < matcher.end(flag.groupName())) {
        raised.add(flag);
      }
    }
    return raised;
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
