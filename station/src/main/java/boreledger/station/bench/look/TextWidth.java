package boreledger.station.bench.look;

import java.util.Collection;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/** How wide words are in em of the default font, the one that the style leaves in place. */
public final class TextWidth {
  private static final double PROBE_PX = 100;

  private TextWidth() {}

  /** In the normal weight. */
  public static double em(String words) {
    return em(words, FontWeight.NORMAL);
  }

  /** In bold. */
  public static double boldEm(String words) {
    return em(words, FontWeight.BOLD);
  }

  /** The widest of several words in bold; 0 when there are none. */
  public static double widestBoldEm(Collection<String> words) {
    return words.stream().mapToDouble(TextWidth::boldEm).max().orElse(0);
  }

  private static double em(String words, FontWeight weight) {
    Text probe = new Text(words);
    probe.setFont(Font.font(Font.getDefault().getFamily(), weight, PROBE_PX));
    return probe.getLayoutBounds().getWidth() / PROBE_PX;
  }
}
