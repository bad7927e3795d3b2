package boreledger.station.bench.view;

import boreledger.station.bench.look.Drawing;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.TextWidth;
import boreledger.station.bench.model.Grid.State;
import boreledger.station.bench.model.SectionPicture;
import boreledger.station.bench.model.SectionPicture.Depth;
import boreledger.station.bench.model.SectionPicture.Kind;
import boreledger.station.bench.words.BenchText;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/**
 * The cylinder from the side: its depths, those done, and the gauge or ring at the one to gauge.
 * Depths are true to each other; the bore is drawn as wide as there is room.
 */
final class SectionDrawing extends Drawing {
  private static final double WALL_SHARE = 0.2;
  private static final double DECK_SHARE = 0.13;
  private static final double LINE_EM = 1.5;

  private SectionPicture picture;
  private double em;
  private double deckY;
  private double leftX;
  private double rightX;
  private double wordsX;
  private double wordsWidth;

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
  protected void draw(double width, double height) {
    if (picture.kind() == Kind.SETTING) {
      setting(width, height);
    } else if (picture.kind() != Kind.NONE) {
      cylinder(width, height);
    }
  }

  private void cylinder(double width, double height) {
    em = Math.max(12, Math.min(height / 18, width / 10.5));
    List<String> words = picture.depths().stream().map(Depth::words).toList();
    wordsWidth = em * (0.2 + TextWidth.widestBoldEm(words));
    deckY = DECK_SHARE * height;
    double scale = (height - deckY) / picture.lengthMm();
    double bore =
        Math.min(picture.boreMm() * scale, (width - wordsWidth - em) / (1 + 2 * WALL_SHARE));
    double wall = WALL_SHARE * bore;
    leftX = wall;
    rightX = leftX + bore;
    wordsX = rightX + wall + 0.5 * em;
    walls(wall, height);
    picture.now().ifPresent(now -> tool(deckY + now.mm() * scale));
    double freeY = deckY;
    for (Depth depth : picture.depths()) {
      double y = deckY + depth.mm() * scale;
      mark(depth, y, wall);
      if (depth.state() == State.NOW || y - LINE_EM * em / 2 >= freeY) {
        words(depth.words(), y, depth.state() == State.NOW);
        freeY = y + LINE_EM * em / 2;
      }
    }
  }

  private void walls(double wall, double height) {
    add(new Rectangle(0, deckY, wall, height - deckY), Styles.WALL);
    add(new Rectangle(rightX, deckY, wall, height - deckY), Styles.WALL);
    add(new Line(0, deckY, leftX, deckY), Styles.DECK);
    add(new Line(rightX, deckY, rightX + wall, deckY), Styles.DECK);
    words(BenchText.SECTION_DECK.with(), deckY - LINE_EM * em / 2, false);
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
    add(new Circle(rightX + wall / 2, y, Math.max(3.5, 0.3 * em)), style);
  }

  private void words(String words, double y, boolean now) {
    double height = LINE_EM * em;
    String style = now ? Styles.DEPTH_WORDS_NOW : Styles.DEPTH_WORDS;
    sizeOf(addWords(words, wordsX, y - height / 2, wordsWidth, height, style), em);
  }

  private void tool(double y) {
    double bore = rightX - leftX;
    double middle = (leftX + rightX) / 2;
    if (picture.kind() == Kind.RING) {
      double thick = 0.07 * bore;
      double half = 0.06 * bore;
      add(new Rectangle(leftX, y - thick / 2, bore / 2 - half, thick), Styles.RING);
      add(new Rectangle(middle + half, y - thick / 2, bore / 2 - half, thick), Styles.RING);
      return;
    }
    double tip = 0.055 * bore;
    double handle = 0.11 * bore;
    Rectangle grip = new Rectangle(middle - handle / 2, 0, handle, 0.6 * deckY);
    grip.setArcWidth(handle);
    grip.setArcHeight(handle);
    add(grip, Styles.RING);
    add(new Line(middle, 0, middle, y), Styles.GAUGE).setStrokeWidth(0.045 * bore);
    add(new Line(leftX + tip, y, rightX - tip, y), Styles.GAUGE).setStrokeWidth(0.07 * bore);
    add(new Circle(leftX + tip, y, tip), Styles.AXIS_TIP);
    add(new Circle(rightX - tip, y, tip), Styles.AXIS_TIP);
  }

  private void setting(double width, double height) {
    double outer = 0.4 * Math.min(width, height);
    double inner = 0.7 * outer;
    double x = width / 2;
    double y = 1.15 * outer;
    add(new Circle(x, y, outer), Styles.WALL);
    add(new Circle(x, y, inner), Styles.BORE_NOW);
    add(new Line(x - inner, y, x + inner, y), Styles.AXIS).setStrokeWidth(0.06 * outer);
    add(new Circle(x - inner, y, 0.08 * outer), Styles.AXIS_TIP);
    add(new Circle(x + inner, y, 0.08 * outer), Styles.AXIS_TIP);
    double px = Math.max(13, 0.27 * outer);
    Label size = addWords(picture.setting(), 0, y + outer, width, 2 * px, Styles.DEPTH_WORDS_NOW);
    size.setAlignment(Pos.CENTER);
    sizeOf(size, px);
  }
}
