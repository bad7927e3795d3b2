package boreledger.station.truth;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Map;

/** Writes a capture file: a header, then one line per chunk of bytes. */
public final class CaptureText {
  private final StringBuilder text = new StringBuilder();

  /** Begins the file; numbers stand bare, everything else in quotation marks. */
  public CaptureText(Map<String, Object> header) {
    text.append("{\"format\":\"boreledger-capture/1\"");
    header.forEach(this::field);
    text.append("}\n");
  }

  /** A moment as capture files write it, with three decimals. */
  public static BigDecimal seconds(double tS) {
    return BigDecimal.valueOf(tS).setScale(3, RoundingMode.HALF_EVEN);
  }

  /** Adds the bytes that arrived at a moment; the text is written as Latin-1. */
  public CaptureText chunk(BigDecimal tS, String bytes) {
    String hex = HexFormat.of().formatHex(bytes.getBytes(StandardCharsets.ISO_8859_1));
    text.append("{\"t\":").append(tS.toPlainString());
    text.append(",\"rx\":\"").append(hex).append("\"}\n");
    return this;
  }

  /** The whole file. */
  @Override
  public String toString() {
    return text.toString();
  }

  private void field(String key, Object value) {
    text.append(",\"").append(key).append("\":");
    if (value instanceof BigDecimal number) {
      text.append(number.toPlainString());
    } else {
      text.append('"').append(value.toString().replace("\"", "\\\"")).append('"');
    }
  }
}
