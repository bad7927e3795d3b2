package boreledger.station.report;

import boreledger.station.drawing.Area;
import boreledger.station.drawing.Figure;
import boreledger.station.drawing.Pen;
import boreledger.station.drawing.Point;
import boreledger.station.drawing.Role;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.List;

/**
 * A ledger's head as a QR code (ISO/IEC 18004), so that a camera can compare it with a ledger.
 *
 * @param head the text, in hexadecimal
 */
record HeadCode(String head) implements Figure {
  /** Modules left free on every side, as the standard asks. */
  private static final int QUIET_ZONE = 4;

  @Override
  public void draw(Pen pen, Area area, double size) {
    ByteMatrix code = code();
    int modules = code.getWidth() + 2 * QUIET_ZONE;
    double module = Math.min(area.width(), area.height()) / modules;
    for (int row = 0; row < code.getHeight(); row++) {
      int column = 0;
      while (column < code.getWidth()) {
        int end = column;
        while (end < code.getWidth() && code.get(end, row) == 1) {
          end++;
        }
        if (end > column) {
          bar(pen, area, module, row, column, end);
        }
        column = end + 1;
      }
    }
  }

  private ByteMatrix code() {
    try {
      return Encoder.encode(head, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException e) {
      throw new IllegalStateException("64 characters fit into any QR code", e);
    }
  }

  private static void bar(Pen pen, Area area, double module, int row, int from, int to) {
    double left = area.x() + (QUIET_ZONE + from) * module;
    double right = area.x() + (QUIET_ZONE + to) * module;
    double top = area.y() + (QUIET_ZONE + row) * module;
    pen.polygon(
        List.of(
            new Point(left, top),
            new Point(right, top),
            new Point(right, top + module),
            new Point(left, top + module)),
        Role.INK);
  }
}
