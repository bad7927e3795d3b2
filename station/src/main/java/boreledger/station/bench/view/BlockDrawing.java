package boreledger.station.bench.view;

import boreledger.station.bench.look.Drawing;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.model.BlockPicture;
import boreledger.station.bench.model.BlockPicture.Bore;
import boreledger.station.bench.words.BenchText;
import boreledger.station.job.Engine.Arrangement;
import boreledger.station.plan.Position;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/**
 * The block from above: its bores, the one to gauge with its axis, and how much of each is done.
 */
final class BlockDrawing extends Drawing {
  private static final double BORE_SHARE = 0.4;
  private static final double NUMBER_SHARE = 0.8;
  private static final double WIDE_NUMBER_SHARE = 0.64;
  private static final double LEAST_NUMBER_PX = 9;
  private static final double CHOSEN_SHARE = 1.14;
  private static final double AXIS_SHARE = 1.32;

  private final Consumer<Position> goTo;
  private BlockPicture picture;
  private int chosen;

  BlockDrawing(ObservableValue<BlockPicture> pictures, Consumer<Position> goTo) {
    super("block");
    this.goTo = goTo;
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    pictures.subscribe(this::show);
    focusedProperty().addListener(changed -> reached());
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /** Whoever comes here by keyboard begins at the bore that is gauged. */
  private void reached() {
    for (Bore bore : picture.bores()) {
      if (bore.now()) {
        chosen = bore.number();
      }
    }
    choose(Math.max(1, chosen));
  }

  private void choose(int number) {
    chosen = Math.max(1, Math.min(picture.bores().size(), number));
    setAccessibleText(spoken());
    redraw();
  }

  private String spoken() {
    return isFocused() && !picture.bores().isEmpty()
        ? BenchText.BLOCK_ACCESSIBLE_CHOICE.with(picture.spoken(), Integer.toString(chosen))
        : picture.spoken();
  }

  private void pressed(KeyEvent event) {
    if (picture.bores().isEmpty()) {
      return;
    }
    switch (event.getCode()) {
      case LEFT, UP -> choose(chosen - 1);
      case RIGHT, DOWN -> choose(chosen + 1);
      case ENTER, SPACE -> goTo.accept(picture.bores().get(chosen - 1).entry());
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void show(BlockPicture newPicture) {
    picture = newPicture;
    choose(Math.max(1, chosen));
  }

  @Override
  protected void draw(double width, double height) {
    if (picture.bores().isEmpty()) {
      return;
    }
    boolean oneRow = picture.arrangement() == Arrangement.INLINE;
    int rows = oneRow ? 1 : 2;
    double columns = oneRow ? picture.bores().size() : (picture.bores().size() + 1) / 2 + 0.5;
    double pitch = Math.min(width / (columns + 0.3), height / (rows + 0.1));
    double left = (width - columns * pitch) / 2;
    double top = (height - rows * pitch) / 2;
    outline(left, top, columns * pitch, rows * pitch, pitch);
    for (int i = 0; i < picture.bores().size(); i++) {
      double column = oneRow ? i : i / 2 + 0.5 * (i % 2);
      int row = oneRow ? 0 : i % 2;
      bore(
          picture.bores().get(i),
          left + (column + 0.5) * pitch,
          top + (row + 0.5) * pitch,
          BORE_SHARE * pitch);
    }
  }

  private void outline(double x, double y, double width, double height, double pitch) {
    double margin = 0.04 * pitch;
    Rectangle block =
        new Rectangle(x - margin, y + margin, width + 2 * margin, height - 2 * margin);
    block.setArcWidth(0.3 * pitch);
    block.setArcHeight(0.3 * pitch);
    add(block, Styles.BLOCK_OUTLINE);
    double middle = y + height / 2;
    add(new Line(x - 3 * margin, middle, x + width + 3 * margin, middle), Styles.CENTRE_LINE);
  }

  private void bore(Bore bore, double x, double y, double radius) {
    if (isFocused() && bore.number() == chosen) {
      add(new Circle(x, y, CHOSEN_SHARE * radius), Styles.BORE_CHOSEN);
    }
    add(new Circle(x, y, radius), bore.now() ? Styles.BORE_NOW : Styles.BORE);
    if (bore.done() > 0) {
      double lengthDeg = -360.0 * bore.done() / bore.planned();
      Arc arc = new Arc(x, y, 0.9 * radius, 0.9 * radius, 90, lengthDeg);
      arc.setType(ArcType.OPEN);
      arc.setStrokeWidth(0.12 * radius);
      add(arc, Styles.DONE_ARC);
    }
    if (bore.now() && picture.axisDeg() != null) {
      axis(x, y, AXIS_SHARE * radius, radius);
    }
    number(bore, x, y, radius);
    Circle area = add(new Circle(x, y, radius), Styles.BORE_AREA);
    area.setId("bore-" + bore.number());
    area.setOnMouseClicked(clicked -> goTo.accept(bore.entry()));
  }

  private void axis(double x, double y, double reach, double radius) {
    double dx = Math.cos(Math.toRadians(picture.axisDeg())) * reach;
    double dy = Math.sin(Math.toRadians(picture.axisDeg())) * reach;
    Line line = add(new Line(x - dx, y + dy, x + dx, y - dy), Styles.AXIS);
    line.setStrokeWidth(0.1 * radius);
    add(new Circle(x - dx, y + dy, 0.11 * radius), Styles.AXIS_TIP);
    add(new Circle(x + dx, y - dy, 0.11 * radius), Styles.AXIS_TIP);
  }

  private void number(Bore bore, double x, double y, double radius) {
    double share = bore.number() > 9 ? WIDE_NUMBER_SHARE : NUMBER_SHARE;
    double px = Math.max(LEAST_NUMBER_PX, share * radius);
    if (px > 1.2 * radius && !bore.now()) {
      return;
    }
    double half = Math.max(0.52 * radius, 0.75 * px);
    String style = bore.now() ? Styles.BORE_NUMBER_NOW : Styles.BORE_NUMBER;
    Label number =
        addWords(Integer.toString(bore.number()), x - half, y - half, 2 * half, 2 * half, style);
    number.setAlignment(Pos.CENTER);
    sizeOf(number, px);
  }
}
