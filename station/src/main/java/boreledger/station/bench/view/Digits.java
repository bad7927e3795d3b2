package boreledger.station.bench.view;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * A number as large as its room allows. Every digit stands in a cell of the same width whatever the
 * font does, the sign has a cell of its own even when there is none, and the size only ever shrinks
 * while a session lasts: so the number does not jump.
 */
final class Digits extends Region {
  private static final double UNIT_SHARE = 0.28;
  private static final double UNIT_GAP = 0.18;
  private static final double PROBE_PX = 100;

  private final Text unit = new Text();
  private final double digitEm = widest("0123456789\u2013");
  private final double signEm = widest("+\u2212");
  private final double pointEm = widest(".");
  private String sign = "";
  private String number = "";

  Digits() {
    getStyleClass().add(Styles.DIGITS);
    unit.getStyleClass().add(Styles.UNIT);
    unit.setTextOrigin(VPos.BASELINE);
    unit.setManaged(false);
    setMinSize(0, 0);
  }

  void show(String newSign, String newNumber, String newUnit) {
    String before = number;
    sign = newSign;
    number = newNumber;
    unit.setText(newUnit);
    if (before.length() != number.length() || getChildren().isEmpty()) {
      cells();
      requestLayout();
    }
    fill();
  }

  private void cells() {
    getChildren().setAll(unit);
    for (int i = 0; i <= number.length(); i++) {
      Text cell = new Text();
      cell.getStyleClass().add(Styles.DIGIT);
      cell.setTextOrigin(VPos.BASELINE);
      cell.setManaged(false);
      getChildren().add(cell);
    }
  }

  private void fill() {
    ((Text) getChildren().get(1)).setText(sign);
    for (int i = 0; i < number.length(); i++) {
      ((Text) getChildren().get(i + 2)).setText(number.substring(i, i + 1));
    }
  }

  @Override
  protected void layoutChildren() {
    double unitEm = UNIT_GAP + UNIT_SHARE * width(unit.getText());
    double widthEm = signEm + numberEm() + unitEm;
    double px = Math.floor(Math.min(getWidth() / widthEm, getHeight() / lineEm()));
    if (px < 1) {
      return;
    }
    setStyle(String.format(Locale.ROOT, "-fx-font-size: %.0fpx", px));
    unit.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.0fpx", px * UNIT_SHARE));
    double baseline = (getHeight() + px * capEm()) / 2;
    double x = 0;
    for (int i = 1; i < getChildren().size(); i++) {
      Text cell = (Text) getChildren().get(i);
      cell.setX(x);
      cell.setY(baseline);
      x += px * (i == 1 ? signEm : cellEm(number.charAt(i - 2)));
    }
    unit.setX(x + px * UNIT_GAP);
    unit.setY(baseline);
  }

  private double numberEm() {
    return number.chars().mapToDouble(each -> cellEm((char) each)).sum();
  }

  private double cellEm(char each) {
    return each == '.' ? pointEm : digitEm;
  }

  private static double lineEm() {
    return 1;
  }

  private static double capEm() {
    return 0.73;
  }

  private static double widest(String characters) {
    return characters.chars().mapToDouble(each -> width(Character.toString(each))).max().orElse(1);
  }

  private static double width(String text) {
    Text probe = new Text(text);
    probe.setFont(Font.font(Font.getDefault().getFamily(), PROBE_PX));
    return probe.getLayoutBounds().getWidth() / PROBE_PX;
  }
}
