package boreledger.station.report;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/**
 * Every point that a page's lines and fillings go through, in points from its lower left corner.
 */
final class Strokes extends PDFGraphicsStreamEngine {
  private final List<Point2D> points = new ArrayList<>();

  private Strokes(PDPage page) {
    super(page);
  }

  static List<Point2D> of(PDPage page) throws IOException {
    Strokes strokes = new Strokes(page);
    strokes.processPage(page);
    return strokes.points;
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    points.addAll(List.of(p0, p1, p2, p3));
  }

  @Override
  public void moveTo(float x, float y) {
    points.add(new Point2D.Float(x, y));
  }

  @Override
  public void lineTo(float x, float y) {
    points.add(new Point2D.Float(x, y));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    points.add(new Point2D.Float(x3, y3));
  }

  @Override
  public Point2D getCurrentPoint() {
    return points.get(points.size() - 1);
  }

  @Override
  public void drawImage(PDImage image) {
    throw new AssertionError("a sheet has no images");
  }

  @Override
  public void clip(int windingRule) {}

  @Override
  public void closePath() {}

  @Override
  public void endPath() {}

  @Override
  public void strokePath() {}

  @Override
  public void fillPath(int windingRule) {}

  @Override
  public void fillAndStrokePath(int windingRule) {}

  @Override
  public void shadingFill(COSName shading) {}
}
