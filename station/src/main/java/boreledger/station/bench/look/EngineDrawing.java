package boreledger.station.bench.look;

import boreledger.station.bench.words.StartText;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.WindowText;
import boreledger.station.job.Engine.Arrangement;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Rotate;

/** An engine as a person recognises it: its banks seen from the end, its bores from above. */
public final class EngineDrawing extends Drawing {
  private static final Map<Arrangement, Text> WORDS =
      Map.of(
          Arrangement.INLINE, StartText.INLINE,
          Arrangement.VEE, StartText.VEE,
          Arrangement.FLAT, StartText.FLAT);
  private static final Map<Arrangement, double[]> BANKS_DEG =
      Map.of(
          Arrangement.INLINE, new double[] {0},
          Arrangement.VEE, new double[] {-40, 40},
          Arrangement.FLAT, new double[] {-90, 90});
  private static final double END_SHARE = 0.22;
  private static final double LEAST_NUMBER_PX = 8;

  private Arrangement arrangement;
  private int cylinders;

  /** An empty picture, found by its id. */
  public EngineDrawing(String id) {
    super(id);
    getStyleClass().add(Styles.ENGINE);
    show(null, 0);
  }

  /**
   * Shows an engine.
   *
   * @param newArrangement null while it is not known: nothing is drawn then
   * @param newCylinders 0 while it is not known
   */
  public void show(Arrangement newArrangement, int newCylinders) {
    arrangement = newArrangement;
    cylinders = newCylinders;
    setAccessibleText(
        isKnown()
            ? WindowText.ENGINE_SPOKEN.with(
                Integer.toString(cylinders), WORDS.get(arrangement).with())
            : WindowText.ENGINE_UNKNOWN.with());
    redraw();
  }

  @Override
  protected void draw(double width, double height) {
    if (!isKnown()) {
      return;
    }
    double end = Math.min(END_SHARE * width, height);
    fromTheEnd(end / 2, height / 2, 0.46 * end);
    fromAbove(1.15 * end, width - 1.15 * end, height);
  }

  private boolean isKnown() {
    return arrangement != null && cylinders > 0;
  }

  private void fromTheEnd(double x, double y, double reach) {
    double crankY = arrangement == Arrangement.FLAT ? y : y + 0.6 * reach;
    double wide = 0.62 * reach;
    double from = 0.22 * reach;
    double tall = (arrangement == Arrangement.FLAT ? 1 : 1.5) * reach - from;
    for (double deg : BANKS_DEG.get(arrangement)) {
      Rectangle bank = new Rectangle(x - wide / 2, crankY - from - tall, wide, tall);
      bank.getTransforms().add(new Rotate(deg, x, crankY));
      add(bank, Styles.BLOCK_OUTLINE);
    }
    add(new Circle(x, crankY, 0.3 * reach), Styles.BORE);
  }

  private void fromAbove(double x, double width, double height) {
    boolean isOneRow = arrangement == Arrangement.INLINE;
    int rows = isOneRow ? 1 : 2;
    double columns = isOneRow ? cylinders : (cylinders + 1) / 2 + 0.5;
    double pitch = Math.min(width / (columns + 0.2), height / (rows + 0.2));
    double left = x + (width - columns * pitch) / 2;
    double top = (height - rows * pitch) / 2;
    Rectangle block = new Rectangle(left, top, columns * pitch, rows * pitch);
    block.setArcWidth(0.3 * pitch);
    block.setArcHeight(0.3 * pitch);
    add(block, Styles.BLOCK_OUTLINE);
    double middle = top + rows * pitch / 2;
    double over = 0.1 * pitch;
    add(new Line(left - over, middle, left + columns * pitch + over, middle), Styles.CENTRE_LINE);
    for (int i = 0; i < cylinders; i++) {
      double column = isOneRow ? i : i / 2 + 0.5 * (i % 2);
      double row = isOneRow ? 0 : i % 2;
      bore(i + 1, left + (column + 0.5) * pitch, top + (row + 0.5) * pitch, 0.4 * pitch);
    }
  }

  private void bore(int number, double x, double y, double radius) {
    add(new Circle(x, y, radius), Styles.BORE);
    double px = 0.9 * radius;
    if (px >= LEAST_NUMBER_PX) {
      Label words =
          addWords(
              Integer.toString(number),
              x - radius,
              y - radius,
              2 * radius,
              2 * radius,
              Styles.BORE_NUMBER);
      words.setAlignment(Pos.CENTER);
      sizeOf(words, px);
    }
  }
}
