package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Cuts a gauge's frames into chunks as a line may: in pieces, or two frames at once. */
public final class ChunkedLine {
  private static final BigDecimal A_LITTLE_S = new BigDecimal("0.003");

  private ChunkedLine() {}

  /**
   * Writes the frames of a session behind a capture's header.
   *
   * @return the readings with the times of the chunks that brought their last bytes
   */
  public static List<BoreReading> write(
      CaptureText capture, List<PressSession.Press> presses, Noise noise) {
    List<BoreReading> readings = new ArrayList<>();
    String waiting = "";
    List<BoreReading> late = new ArrayList<>();
    for (int i = 0; i < presses.size(); i++) {
      PressSession.Press press = presses.get(i);
      if (waiting.isEmpty() && i + 1 < presses.size() && noise.chance(0.1)) {
        waiting = press.frame();
        late.add(press.reading());
        continue;
      }
      BigDecimal tS = press.reading().tS();
      late.forEach(r -> readings.add(new BoreReading(tS, r.mm(), r.position())));
      late.clear();
      send(capture, tS, waiting + press.frame(), noise);
      waiting = "";
      readings.add(press.reading());
    }
    return readings;
  }

  private static void send(CaptureText capture, BigDecimal tS, String bytes, Noise noise) {
    if (noise.chance(0.8) || tS.compareTo(A_LITTLE_S) < 0) {
      capture.chunk(tS, bytes);
      return;
    }
    int cut = noise.between(1, bytes.length() - 1);
    BigDecimal frontTs = bytes.indexOf('\n') < bytes.length() - 1 ? tS : tS.subtract(A_LITTLE_S);
    capture.chunk(frontTs, bytes.substring(0, cut));
    capture.chunk(tS, bytes.substring(cut));
  }
}
