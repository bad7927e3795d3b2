package boreledger.station.bench.look;

import boreledger.station.bench.words.Told;
import boreledger.station.drawing.Anchor;
import boreledger.station.drawing.Area;
import boreledger.station.drawing.Figure;
import boreledger.station.drawing.Pen;
import boreledger.station.drawing.Point;
import boreledger.station.drawing.Role;
import boreledger.station.drawing.Stroke;
import boreledger.station.wording.Phrase;
import java.util.List;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** A figure on the screen: the same one that the build sheet has on paper. */
public final class FigureView extends Drawing {
  private static final double WORDS_PER_HEIGHT = 1 / 26.0;
  private static final double LEAST_WORDS_PX = 10;

  private final double wordsPx;
  private Figure figure;

  /**
   * An empty view.
   *
   * @param scale how large its words are, 1 for the usual size
   */
  public FigureView(String id, double scale) {
    super(id);
    wordsPx = scale;
  }

  /**
   * Shows another figure; null for none.
   *
   * @param spoken what a screen reader says of it
   */
  public void show(Figure newFigure, String spoken) {
    figure = newFigure;
    setAccessibleText(spoken);
    redraw();
  }

  @Override
  protected void draw(double width, double height) {
    if (figure != null) {
      double size = Math.max(LEAST_WORDS_PX, wordsPx * WORDS_PER_HEIGHT * Math.min(height, width));
      figure.draw(new ShapePen(), new Area(0, 0, width, height), size);
    }
  }

  private static String style(Role role) {
    return switch (role) {
      case INK -> Styles.FIGURE_INK;
      case QUIET -> Styles.FIGURE_QUIET;
      case GROUND -> Styles.FIGURE_GROUND;
      case LIMIT -> Styles.FIGURE_LIMIT;
      case BAND -> Styles.FIGURE_BAND;
      case FIRST_AXIS -> Styles.FIGURE_FIRST_AXIS;
      case SECOND_AXIS -> Styles.FIGURE_SECOND_AXIS;
      case OTHER_AXIS -> Styles.FIGURE_OTHER_AXIS;
      case ATTENTION -> Styles.FIGURE_ATTENTION;
    };
  }

  /** Draws with shapes, whose colours the style sheet gives. */
  private final class ShapePen implements Pen {
    @Override
    public void polyline(List<Point> points, Stroke stroke) {
      stroked(new Polyline(coordinates(points)), stroke);
    }

    @Override
    public void polygon(List<Point> corners, Role role) {
      add(new Polygon(coordinates(corners)), Styles.FIGURE_FILL, style(role));
    }

    @Override
    public void arc(Point centre, double radius, double fromDeg, double sweepDeg, Stroke stroke) {
      Arc arc = new Arc(centre.x(), centre.y(), radius, radius, fromDeg, sweepDeg);
      arc.setType(ArcType.OPEN);
      stroked(arc, stroke);
    }

    @Override
    public void disc(Point centre, double radius, Role role) {
      add(new Circle(centre.x(), centre.y(), radius), Styles.FIGURE_FILL, style(role));
    }

    @Override
    public void text(String words, Point at, Anchor anchor, double size, Role role) {
      Text text = new Text(anchor.left(at.x(), width(words, size)), at.y(), words);
      sizeOf(text, size);
      add(text, Styles.FIGURE_FILL, style(role));
    }

    @Override
    public String say(Phrase phrase, String... parts) {
      return Told.vocabulary().say(phrase, parts);
    }

    @Override
    public double width(String words, double size) {
      Text probe = new Text(words);
      probe.setFont(Font.font(size));
      return probe.getLayoutBounds().getWidth();
    }

    private void stroked(Shape shape, Stroke stroke) {
      add(shape, Styles.FIGURE_LINE, style(stroke.role()));
      shape.setStrokeWidth(stroke.width());
      for (double length : stroke.dash().lengths()) {
        shape.getStrokeDashArray().add(length * stroke.width());
      }
    }

    private double[] coordinates(List<Point> points) {
      double[] coordinates = new double[2 * points.size()];
      for (int i = 0; i < points.size(); i++) {
        coordinates[2 * i] = points.get(i).x();
        coordinates[2 * i + 1] = points.get(i).y();
      }
      return coordinates;
    }
  }
}
