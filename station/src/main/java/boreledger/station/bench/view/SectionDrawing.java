package boreledger.station.bench.view;

import boreledger.station.bench.model.Grid.State;
import boreledger.station.bench.model.SectionPicture;
import boreledger.station.bench.model.SectionPicture.Depth;
import boreledger.station.bench.model.SectionPicture.Kind;
import boreledger.station.bench.model.Text;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/**
 * The cylinder from the side: its depths, those done, and the gauge or ring at the one to gauge.
 */
final class SectionDrawing extends Drawing {
  private static final double WALL_SHARE = 0.16;
  private static final double TOP_SHARE = 0.12;

  private SectionPicture picture;
  private double em;
  private double deckY;
  private double floorY;
  private double leftX;
  private double rightX;

  SectionDrawing(ObservableValue<SectionPicture> pictures) {
    super("section");
    pictures.subscribe(this::show);
  }

  private void show(SectionPicture newPicture) {
    picture = newPicture;
    setAccessibleText(picture.spoken());
    redraw();
  }

  @Override
  void draw(double width, double height) {
    if (picture.kind() == Kind.SETTING) {
      setting(width, height);
    } else if (picture.kind() != Kind.NONE) {
      em = Math.max(11, Math.min(height / 16, width / 13));
      cylinder(width, height);
    }
  }

  private void cylinder(double width, double height) {
    deckY = TOP_SHARE * height;
    floorY = height;
    double scale = (floorY - deckY) / picture.lengthMm();
    double wordsWidth = 4.6 * em;
    double room = width - wordsWidth;
    double bore = Math.min(picture.boreMm() * scale, room / (1 + 2 * WALL_SHARE));
    double wall = WALL_SHARE * bore;
    leftX = (room - bore) / 2;
    rightX = leftX + bore;
    wall(leftX - wall, wall);
    wall(rightX, wall);
    add(new Line(leftX - wall, deckY, leftX, deckY), Styles.DECK);
    add(new Line(rightX, deckY, rightX + wall, deckY), Styles.DECK);
    sizeOf(
        addWords(
            Text.SECTION_DECK.with(),
            rightX + wall + 0.4 * em,
            deckY - 0.8 * em,
            wordsWidth - 0.4 * em,
            1.6 * em,
            Styles.DEPTH_WORDS),
        0.85 * em);
    picture.now().ifPresent(now -> tool(now, scale));
    double lastWordsY = deckY;
    for (Depth depth : picture.depths()) {
      double y = deckY + depth.mm() * scale;
      mark(depth, y, wall);
      if (y - lastWordsY >= 1.25 * em || depth.state() == State.NOW) {
        words(depth, y, rightX + wall + 0.4 * em, wordsWidth - 0.4 * em);
        lastWordsY = y;
      }
    }
  }

  private void wall(double x, double width) {
    add(new Rectangle(x, deckY, width, floorY - deckY), Styles.WALL);
  }

  private void mark(Depth depth, double y, double wall) {
    if (depth.state() != State.NOW) {
      add(new Line(leftX, y, rightX, y), Styles.DEPTH_LEVEL);
    }
    String style =
        switch (depth.state()) {
          case OPEN -> Styles.DEPTH_OPEN;
          case NOW -> Styles.DEPTH_NOW;
          case TAKEN -> Styles.DEPTH_TAKEN;
        };
    add(new Circle(rightX + wall / 2, y, Math.max(3, 0.28 * em)), style);
  }

  private void words(Depth depth, double y, double x, double width) {
    boolean now = depth.state() == State.NOW;
    sizeOf(
        addWords(
            depth.words(),
            x,
            y - 0.8 * em,
            width,
            1.6 * em,
            now ? Styles.DEPTH_WORDS_NOW : Styles.DEPTH_WORDS),
        em);
  }

  private void tool(Depth now, double scale) {
    double y = deckY + now.mm() * scale;
    double middle = (leftX + rightX) / 2;
    if (picture.kind() == Kind.RING) {
      double half = 0.05 * (rightX - leftX);
      add(new Rectangle(leftX, y - 3, middle - half - leftX, 6), Styles.RING);
      add(new Rectangle(middle + half, y - 3, rightX - middle - half, 6), Styles.RING);
      return;
    }
    Line rod = add(new Line(middle, 0, middle, y), Styles.GAUGE);
    rod.setStrokeWidth(0.06 * (rightX - leftX));
    Line head = add(new Line(leftX + 4, y, rightX - 4, y), Styles.GAUGE);
    head.setStrokeWidth(0.08 * (rightX - leftX));
  }

  private void setting(double width, double height) {
    double outer = 0.36 * Math.min(width, height);
    double inner = 0.68 * outer;
    double x = width / 2;
    double y = height / 2 - 0.1 * outer;
    add(new Circle(x, y, outer), Styles.WALL);
    add(new Circle(x, y, inner), Styles.BORE_NOW);
    Line across = add(new Line(x - inner, y, x + inner, y), Styles.AXIS);
    across.setStrokeWidth(0.06 * outer);
    add(new Circle(x - inner, y, 0.08 * outer), Styles.AXIS_TIP);
    add(new Circle(x + inner, y, 0.08 * outer), Styles.AXIS_TIP);
    double px = Math.max(12, 0.24 * outer);
    var size =
        addWords(
            picture.setting(), 0, y + outer + 0.3 * px, width, 1.5 * px, Styles.DEPTH_WORDS_NOW);
    size.setAlignment(Pos.CENTER);
    sizeOf(size, px);
  }
}
