package boreledger.drivers.decoder;

import boreledger.drivers.file.OneLine;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads numeric responses of IEEE 488.2: NR1 such as {@code 42} (8.7.2), NR2 such as {@code 42.69}
 * (8.7.3), NR3 such as {@code 1.0005E+3} (8.7.4).
 *
 * <ul>
 *   <li>Digits stand on both sides of the point, the exponent has a sign and a capital E.
 *   <li>9.91E37, 9.9E37 and -9.9E37 are named as what they stand for, also without the sign in the
 *       exponent (SCPI-99, volume 1, 7.2.1.4 and 7.2.1.5).
 *   <li>A carriage return before the frame's ending is left off: serial lines add it.
 * </ul>
 */
final class Ieee488Reader implements NumberReader {
  private static final Pattern RESPONSE = Pattern.compile("[+-]?\\d++(?:\\.\\d++(?:E[+-]\\d++)?)?");

  private final BigDecimal scale;

  Ieee488Reader(DecodeSpec.Ieee488 spec) {
    scale = spec.scale();
  }

  @Override
  public SentNumber read(FrameEvent.Frame frame, LengthUnit bitUnit) throws Unreadable {
    String text = AsciiText.of(frame.payload());
    String response = text.endsWith("\r") ? text.substring(0, text.length() - 1) : text;
    String shown = '"' + OneLine.of(response) + '"';
    BigDecimal number = DecimalText.parse(response);
    if (!RESPONSE.matcher(response).matches()) {
      throw new Unreadable(shown + " is no NR1, NR2 or NR3 response");
    }
    return new SentNumber(shown, number.multiply(scale), null, Set.of());
  }
}
