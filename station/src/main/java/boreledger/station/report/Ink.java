package boreledger.station.report;

import boreledger.station.drawing.Role;
import java.awt.Color;

/**
 * The one place where a role becomes a colour of ink, dark enough for a printer without colours.
 */
final class Ink {
  private Ink() {}

  static Color of(Role role) {
    return switch (role) {
      case INK -> new Color(0x111111);
      case QUIET -> new Color(0x666666);
      case GROUND -> Color.WHITE;
      case LIMIT -> new Color(0x8A1C1C);
      case BAND -> new Color(0x7A8A99);
      case FIRST_AXIS -> new Color(0x0B4A85);
      case SECOND_AXIS -> new Color(0xA34A00);
      case OTHER_AXIS -> new Color(0x1F6B3A);
      case ATTENTION -> new Color(0xA00000);
    };
  }
}
