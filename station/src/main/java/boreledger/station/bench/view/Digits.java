package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.TextWidth;
import boreledger.station.bench.model.LiveValue;
import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/**
 * A number as large as its room allows. Every digit stands in a cell of the same width whatever the
 * font does, and the sign has a cell of its own even while there is none: so the number does not
 * jump.
 */
final class Digits extends Region {
  private static final double UNIT_SHARE = 0.3;
  private static final double UNIT_GAP_EM = 0.14;
  private static final double CAPITAL_EM = 0.73;
  private static final double LINE_EM = 0.98;

  private final Text unit = new Text();
  private final double digitEm = widest("0123456789\u2013");
  private final double signEm = widest("+\u2212");
  private final double pointEm = widest(".");
  private LiveValue value;

  Digits() {
    getStyleClass().add(Styles.DIGITS);
    unit.getStyleClass().add(Styles.UNIT);
    unit.setManaged(false);
    setMinWidth(0);
  }

  void show(LiveValue newValue) {
    boolean sameCells =
        value != null
            && value.digits().length() == newValue.digits().length()
            && value.signed() == newValue.signed();
    value = newValue;
    if (!sameCells) {
      cells();
      requestLayout();
    }
    unit.setText(value.unit());
    for (int i = 0; i < characters().length(); i++) {
      cell(i).setText(characters().substring(i, i + 1));
    }
  }

  /** The characters, one per cell; a blank where a sign may come. */
  private String characters() {
    String sign = value.sign().isEmpty() ? " " : value.sign();
    return (value.signed() ? sign : "") + value.digits();
  }

  private void cells() {
    getChildren().setAll(unit);
    for (int i = 0; i < characters().length(); i++) {
      Text cell = new Text();
      cell.getStyleClass().add(Styles.DIGIT);
      cell.setManaged(false);
      getChildren().add(cell);
    }
  }

  private Text cell(int number) {
    return (Text) getChildren().get(number + 1);
  }

  @Override
  protected void layoutChildren() {
    double unitEm = UNIT_GAP_EM + UNIT_SHARE * TextWidth.em(unit.getText());
    double widthEm = unitEm;
    for (int i = 0; i < characters().length(); i++) {
      widthEm += cellEm(i);
    }
    double px = Math.floor(Math.min(getWidth() / widthEm, getHeight() / LINE_EM));
    if (px >= 1) {
      place(px);
    }
  }

  private void place(double px) {
    unit.setStyle(fontSize(px * UNIT_SHARE));
    double baseline = (getHeight() + px * CAPITAL_EM) / 2;
    double x = 0;
    for (int i = 0; i < characters().length(); i++) {
      cell(i).setStyle(fontSize(px));
      cell(i).setX(x);
      cell(i).setY(baseline);
      x += px * cellEm(i);
    }
    unit.setX(x + px * UNIT_GAP_EM);
    unit.setY(baseline);
  }

  private double cellEm(int number) {
    if (number == 0 && value.signed()) {
      return signEm;
    }
    return characters().charAt(number) == '.' ? pointEm : digitEm;
  }

  private static String fontSize(double px) {
    return String.format(Locale.ROOT, "-fx-font-size: %.0fpx", px);
  }

  private static double widest(String characters) {
    return characters
        .chars()
        .mapToDouble(each -> TextWidth.em(Character.toString(each)))
        .max()
        .orElse(1);
  }
}
