package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Brings a press session over a bad line: nothing of the readings is lost, yet junk, a lost line
 * ending, an over-long line, a split frame, two frames at once, a far value and a cut frame are
 * among them.
 */
public final class DamagedLine {

  /** A stretch of bytes that must be refused, when it was complete, and why in words. */
  public record Refusal(BigDecimal tS, String why) {}

  private final CaptureText capture;
  private final List<BoreReading> readings = new ArrayList<>();
  private final List<Refusal> rejected = new ArrayList<>();
  private final List<Refusal> tooFar = new ArrayList<>();

  /** Damages the session while writing it behind the header of this capture. */
  public DamagedLine(CaptureText capture, List<PressSession.Press> presses) {
    this.capture = capture;
    for (int i = 0; i < presses.size(); i++) {
      BigDecimal before = presses.get(i).reading().tS().subtract(new BigDecimal("0.500"));
      switch (i) {
        case 1 -> junk(before);
        case 3 -> inPieces(presses.get(i));
        case 5 -> lostEnding(before);
        case 8 -> overLong(before);
        case 11 -> far(before);
        case 12 -> twoAtOnce(presses.get(i), presses.get(i + 1));
        default -> {}
      }
      if (i != 3 && i != 12 && i != 13) {
        whole(presses.get(i));
      }
    }
    cut(presses.get(presses.size() - 1).reading().tS().add(new BigDecimal("4.000")));
  }

  /** The readings that remain, with the times at which their frames were complete. */
  public List<BoreReading> readings() {
    return List.copyOf(readings);
  }

  /** What no decoder can read. */
  public List<Refusal> rejected() {
    return List.copyOf(rejected);
  }

  /** What decodes but cannot be a bore of this engine. */
  public List<Refusal> tooFar() {
    return List.copyOf(tooFar);
  }

  private void whole(PressSession.Press press) {
    capture.chunk(press.reading().tS(), press.frame());
    readings.add(press.reading());
  }

  private void junk(BigDecimal tS) {
    capture.chunk(tS, "\u0000\u00ff\u007f\u0015\u0080");
    capture.chunk(later(tS, 20), "\u00c3(\r\n");
    rejected.add(new Refusal(later(tS, 20), "junk bytes, not a number"));
  }

  private void inPieces(PressSession.Press press) {
    String frame = press.frame();
    BigDecimal tS = press.reading().tS();
    capture.chunk(later(tS, -9), frame.substring(0, 3));
    capture.chunk(later(tS, -4), frame.substring(3, frame.length() - 1));
    capture.chunk(tS, frame.substring(frame.length() - 1));
    readings.add(press.reading());
  }

  private void lostEnding(BigDecimal tS) {
    capture.chunk(later(tS, -2000), "+0.031");
    capture.chunk(tS, "+0.032\r\n");
    rejected.add(new Refusal(tS, "two numbers in one line, the ending between them was lost"));
  }

  private void overLong(BigDecimal tS) {
    capture.chunk(tS, "U".repeat(90));
    capture.chunk(later(tS, 95), "U".repeat(90) + "\r\n");
    rejected.add(new Refusal(later(tS, 95), "a line longer than the profile's max_bytes"));
  }

  private void far(BigDecimal tS) {
    capture.chunk(tS, "+7.500\r\n");
    tooFar.add(new Refusal(tS, "no bore of this engine can be 7.5 mm above the setting ring"));
  }

  private void twoAtOnce(PressSession.Press first, PressSession.Press second) {
    BigDecimal tS = second.reading().tS();
    capture.chunk(tS, first.frame() + second.frame());
    readings.add(new BoreReading(tS, first.reading().mm(), first.reading().position()));
    readings.add(second.reading());
  }

  private void cut(BigDecimal tS) {
    capture.chunk(tS, "+0.00");
    rejected.add(new Refusal(tS, "the capture ends inside a line"));
  }

  private static BigDecimal later(BigDecimal tS, int milliseconds) {
    return tS.add(BigDecimal.valueOf(milliseconds, 3));
  }
}
