package boreledger.station.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.drawing.BlockFigure.Cylinder;
import boreledger.station.drawing.BoreProfileFigure.Curve;
import boreledger.station.drawing.BoreProfileFigure.CurvePoint;
import boreledger.station.drawing.GapFigure.GapPlace;
import boreledger.station.drawing.GapFigure.GapPoint;
import boreledger.station.drawing.NotedPen.Words;
import boreledger.station.drawing.RoundSection.Diameter;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.Engine.Arrangement;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Vocabulary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FiguresTest {
  private static final double SIZE = 7;

  static Stream<Arguments> figures() {
    return Stream.of(DisplayUnit.values())
        .map(LengthFormat::new)
        .flatMap(
            lengths ->
                Stream.of(
                    Arguments.of("two axes", profile(lengths, 3, "thrust", "pin")),
                    Arguments.of("four axes", profile(lengths, 10, "thrust", "a", "pin", "b")),
                    Arguments.of("one depth", profile(lengths, 1, "thrust", "pin")),
                    Arguments.of("three sections", sections(lengths, 3)),
                    Arguments.of("ten sections", sections(lengths, 10)),
                    Arguments.of("three gaps", gaps(lengths, 3)),
                    Arguments.of("ten gaps", gaps(lengths, 10)),
                    Arguments.of("one gap", gaps(lengths, 1)),
                    Arguments.of("two axes, before and after", change(lengths, 3, "thrust", "pin")),
                    Arguments.of(
                        "four axes, before and after", change(lengths, 10, "a", "b", "c", "d")),
                    Arguments.of("gaps before and after", change(lengths, 1, (String) null)),
                    Arguments.of("a row", block(Arrangement.INLINE, 6)),
                    Arguments.of("a vee", block(Arrangement.VEE, 12)),
                    Arguments.of("a flat block", block(Arrangement.FLAT, 4))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("figures")
  void aFigureStaysInItsArea(String name, Figure figure) {
    Area area = new Area(30, 50, 280, 180);
    NotedPen pen = drawn(figure, area);

    assertTrue(pen.points().size() > 3 && pen.words().size() > 3, "something was drawn");
    double slack = 0.5;
    for (Point point : pen.points()) {
      assertTrue(
          point.x() >= area.x() - slack
              && point.x() <= area.right() + slack
              && point.y() >= area.y() - slack
              && point.y() <= area.bottom() + slack,
          point::toString);
    }
    for (Words words : pen.words()) {
      assertTrue(
          words.left() >= area.x() - slack
              && words.right() <= area.right() + slack
              && words.top() >= area.y() - slack
              && words.bottom() <= area.bottom() + slack,
          words::toString);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("figures")
  void noWordsOverlap(String name, Figure figure) {
    List<Words> words = drawn(figure, new Area(0, 0, 280, 180)).words();

    for (int i = 0; i < words.size(); i++) {
      for (int j = i + 1; j < words.size(); j++) {
        assertFalse(words.get(i).meets(words.get(j)), words.get(i) + " " + words.get(j));
      }
    }
  }

  @Test
  void everyAxisHasALineOfItsOwnAndIsNamed() {
    LengthFormat lengths = new LengthFormat(DisplayUnit.MM);
    NotedPen pen = drawn(profile(lengths, 3, "thrust", "a", "pin", "b"), new Area(0, 0, 280, 180));

    List<String> words = pen.words().stream().map(Words::words).toList();
    assertTrue(
        words.containsAll(List.of("thrust axis", "a axis", "pin axis", "b axis")), words::toString);
    List<Dash> dashes = pen.strokes().stream().map(Stroke::dash).distinct().toList();
    assertTrue(dashes.containsAll(Arrays.asList(Dash.values())), dashes::toString);
  }

  @Test
  void beforeIsBrokenAndAfterIsWholeSoThatNoColourIsNeeded() {
    NotedPen pen =
        drawn(change(new LengthFormat(DisplayUnit.MM), 3, "thrust"), new Area(0, 0, 280, 180));

    List<String> words = pen.words().stream().map(Words::words).toList();
    assertTrue(words.containsAll(List.of("thrust before", "thrust after")), words::toString);
    List<Dash> axis =
        pen.strokes().stream()
            .filter(stroke -> stroke.role() == Role.FIRST_AXIS)
            .map(Stroke::dash)
            .distinct()
            .toList();
    assertTrue(axis.containsAll(List.of(Dash.DASHED, Dash.SOLID)), axis::toString);
  }

  @Test
  void aLimitFarAwayIsNamedAtTheEdge() {
    LengthFormat lengths = new LengthFormat(DisplayUnit.MM);
    NotedPen pen = drawn(profile(lengths, 3, "thrust"), new Area(0, 0, 280, 180));

    List<String> words = pen.words().stream().map(Words::words).toList();
    assertTrue(words.contains("largest 96.030"), words::toString);
    assertTrue(words.contains("wear limit 97.000 \u2192"), words::toString);
  }

  @Test
  void aReadingThatIsMissingBreaksTheLine() {
    LengthFormat lengths = new LengthFormat(DisplayUnit.MM);
    List<CurvePoint> points =
        List.of(
            new CurvePoint(10, 96.01, 0.003),
            new CurvePoint(20, null, null),
            new CurvePoint(30, 96.02, 0.003));
    BoreProfileFigure broken =
        new BoreProfileFigure(
            List.of(new Curve("thrust", points)), List.of(), 96.0, 96.03, 30, lengths);
    BoreProfileFigure whole =
        new BoreProfileFigure(
            List.of(new Curve("thrust", List.of(points.get(0), points.get(2)))),
            List.of(),
            96.0,
            96.03,
            30,
            lengths);
    Area area = new Area(0, 0, 280, 180);

    // Two error bars of three lines each take the place of one line.
    assertEquals(drawn(whole, area).strokes().size() + 5, drawn(broken, area).strokes().size());
  }

  @Test
  void aBlockTellsEveryStateInWords() {
    List<String> words =
        drawn(block(Arrangement.INLINE, 6), new Area(0, 0, 600, 180)).words().stream()
            .map(Words::words)
            .toList();

    for (BoreState state : BoreState.values()) {
      assertTrue(
          words.contains(Vocabulary.ENGLISH.say(state.phrase())), () -> state + " in " + words);
    }
    assertTrue(words.contains("look at its rings"), words::toString);
  }

  @Test
  void sectionsTellTheirScale() {
    NotedPen pen = drawn(sections(new LengthFormat(DisplayUnit.MM), 3), new Area(0, 0, 280, 180));

    assertTrue(
        pen.words().stream()
            .anyMatch(each -> each.words().equals("Deviations drawn 1000 times larger.")));
  }

  private static NotedPen drawn(Figure figure, Area area) {
    NotedPen pen = new NotedPen();
    figure.draw(pen, area, SIZE);
    return pen;
  }

  private static Figure profile(LengthFormat lengths, int depths, String... axes) {
    List<Curve> curves =
        IntStream.range(0, axes.length)
            .mapToObj(
                axis ->
                    new Curve(
                        axes[axis],
                        IntStream.rangeClosed(1, depths)
                            .mapToObj(i -> new CurvePoint(10.0 * i, 96.01 + 0.002 * axis, 0.003))
                            .toList()))
            .toList();
    List<ValueMark> marks =
        List.of(
            new ValueMark(Phrase.FIGURE_SMALLEST, 96.0, Stroke.solid(Role.LIMIT, 1)),
            new ValueMark(Phrase.FIGURE_LARGEST, 96.03, Stroke.solid(Role.LIMIT, 1)),
            new ValueMark(Phrase.FIGURE_WEAR_LIMIT, 97.0, Stroke.solid(Role.LIMIT, 1)));
    return new BoreProfileFigure(curves, marks, 95.998, 96.032, 10.0 * depths, lengths);
  }

  private static Figure sections(LengthFormat lengths, int depths) {
    return new RoundnessFigure(
        IntStream.rangeClosed(1, depths)
            .mapToObj(
                i ->
                    new RoundSection(
                        11.0 * i,
                        List.of(new Diameter("thrust", 90, 96.02), new Diameter("pin", 0, 96.01)),
                        0.01,
                        0.0026))
            .toList(),
        1000,
        lengths);
  }

  private static Figure gaps(LengthFormat lengths, int depths) {
    List<GapPoint> points =
        IntStream.rangeClosed(1, depths)
            .mapToObj(i -> new GapPoint(10.0 * i, 0.5 - 0.01 * i, 0.006, 0.501 - 0.01 * i))
            .toList();
    List<ValueMark> marks =
        List.of(
            new ValueMark(Phrase.FIGURE_SMALLEST, 0.3, Stroke.solid(Role.LIMIT, 1)),
            new ValueMark(Phrase.FIGURE_LARGEST, 0.75, Stroke.solid(Role.LIMIT, 1)),
            new ValueMark(Phrase.FIGURE_TARGET, 0.48, Stroke.solid(Role.LIMIT, 1)));
    GapPlace tightest = new GapPlace(10.0 * depths, 0.5 - 0.01 * depths);
    return new GapFigure(points, tightest, marks, 113, lengths);
  }

  private static Figure block(Arrangement arrangement, int cylinders) {
    BoreState[] states = BoreState.values();
    return new BlockFigure(
        arrangement,
        IntStream.rangeClosed(1, cylinders)
            .mapToObj(i -> new Cylinder(i, states[(i - 1) % states.length], i % 2 == 0))
            .toList());
  }

  private static ChangeFigure change(LengthFormat lengths, int depths, String... axes) {
    List<ChangeFigure.Curve> curves = new ArrayList<>();
    for (int axis = 0; axis < axes.length; axis++) {
      List<ChangeFigure.ChangePoint> points = new ArrayList<>();
      for (int i = 0; i < depths; i++) {
        double beforeMm = 96.02 + 0.002 * axis - 0.001 * i;
        points.add(new ChangeFigure.ChangePoint(12 + 10.0 * i, beforeMm, beforeMm + 0.01, 0.0043));
      }
      curves.add(new ChangeFigure.Curve(axes[axis], points));
    }
    return new ChangeFigure(curves, Phrase.FIGURE_DIAMETER, lengths);
  }
}
