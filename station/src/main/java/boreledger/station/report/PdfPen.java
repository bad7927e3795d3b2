package boreledger.station.report;

import boreledger.station.drawing.Anchor;
import boreledger.station.drawing.Dash;
import boreledger.station.drawing.Pen;
import boreledger.station.drawing.Point;
import boreledger.station.drawing.Role;
import boreledger.station.drawing.Stroke;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws on a page. Files are made in memory, so that writing to them cannot fail. */
final class PdfPen implements Pen {
  private static final double STRONG_STROKE = 0.032;
  private static final double LEAST_DASH = 0.6;
  private static final float BAND_OPACITY = 0.28f;

  private final PDPageContentStream content;
  private final Face face;
  private final double pageHeight;

  /** Something that writes to the page. */
  @FunctionalInterface
  private interface Writing {
    void to(PDPageContentStream content) throws IOException;
  }

  PdfPen(PDPageContentStream content, Face face, double pageHeight) {
    this.content = content;
    this.face = face;
    this.pageHeight = pageHeight;
  }

  @Override
  public void polyline(List<Point> points, Stroke stroke) {
    write(
        page -> {
          begin(stroke);
          path(points);
          page.stroke();
        });
  }

  @Override
  public void polygon(List<Point> corners, Role role) {
    fill(role, () -> path(corners));
  }

  @Override
  public void arc(Point centre, double radius, double fromDeg, double sweepDeg, Stroke stroke) {
    write(
        page -> {
          begin(stroke);
          arcPath(centre, radius, fromDeg, sweepDeg);
          page.stroke();
        });
  }

  @Override
  public void disc(Point centre, double radius, Role role) {
    fill(role, () -> arcPath(centre, radius, 0, 360));
  }

  @Override
  public void text(String words, Point at, Anchor anchor, double size, Role role) {
    write(
        page -> {
          page.setNonStrokingColor(Ink.of(role));
          show(words, anchor.left(at.x(), width(words, size)), at.y(), size);
        });
  }

  /** Writes words in bold: the font has no bold cut, so that its outlines are drawn as well. */
  void strong(String words, Point at, Anchor anchor, double size) {
    write(
        page -> {
          page.setNonStrokingColor(Ink.of(Role.INK));
          page.setStrokingColor(Ink.of(Role.INK));
          page.setLineWidth((float) (STRONG_STROKE * size));
          page.setLineDashPattern(new float[0], 0);
          page.setRenderingMode(RenderingMode.FILL_STROKE);
          show(words, anchor.left(at.x(), width(words, size)), at.y(), size);
          page.setRenderingMode(RenderingMode.FILL);
        });
  }

  @Override
  public double width(String words, double size) {
    return face.width(words, size);
  }

  private void show(String words, double x, double y, double size) throws IOException {
    content.beginText();
    content.setFont(face.font(), (float) size);
    content.newLineAtOffset((float) x, (float) (pageHeight - y));
    content.showText(face.showable(words));
    content.endText();
  }

  private void fill(Role role, Runnable path) {
    write(
        page -> {
          page.saveGraphicsState();
          if (role == Role.BAND) {
            PDExtendedGraphicsState seeThrough = new PDExtendedGraphicsState();
            seeThrough.setNonStrokingAlphaConstant(BAND_OPACITY);
            page.setGraphicsStateParameters(seeThrough);
          }
          page.setNonStrokingColor(Ink.of(role));
          path.run();
          page.fill();
          page.restoreGraphicsState();
        });
  }

  private void begin(Stroke stroke) throws IOException {
    content.setStrokingColor(Ink.of(stroke.role()));
    content.setLineWidth((float) stroke.width());
    double unit = Math.max(LEAST_DASH, stroke.width());
    List<Double> lengths = stroke.dash() == Dash.SOLID ? List.of() : stroke.dash().lengths();
    float[] pattern = new float[lengths.size()];
    for (int i = 0; i < pattern.length; i++) {
      pattern[i] = (float) (unit * lengths.get(i));
    }
    content.setLineDashPattern(pattern, 0);
  }

  private void path(List<Point> points) {
    write(
        page -> {
          page.moveTo(x(points.get(0)), y(points.get(0)));
          for (Point point : points.subList(1, points.size())) {
            page.lineTo(x(point), y(point));
          }
        });
  }

  /** A circle's part by cubic curves of at most a quarter turn each. */
  private void arcPath(Point centre, double radius, double fromDeg, double sweepDeg) {
    int parts = (int) Math.max(1, Math.ceil(Math.abs(sweepDeg) / 90));
    double step = Math.toRadians(sweepDeg / parts);
    double reach = radius * 4 / 3 * Math.tan(step / 4);
    write(
        page -> {
          double angle = Math.toRadians(fromDeg);
          Point from = onCircle(centre, radius, angle);
          page.moveTo(x(from), y(from));
          for (int i = 0; i < parts; i++) {
            Point to = onCircle(centre, radius, angle + step);
            Point leaving = from.plus(-reach * Math.sin(angle), -reach * Math.cos(angle));
            Point coming = to.plus(reach * Math.sin(angle + step), reach * Math.cos(angle + step));
            page.curveTo(x(leaving), y(leaving), x(coming), y(coming), x(to), y(to));
            from = to;
            angle += step;
          }
        });
  }

  private static Point onCircle(Point centre, double radius, double rad) {
    return centre.plus(radius * Math.cos(rad), -radius * Math.sin(rad));
  }

  private static float x(Point point) {
    return (float) point.x();
  }

  private float y(Point point) {
    return (float) (pageHeight - point.y());
  }

  private void write(Writing writing) {
    try {
      writing.to(content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
