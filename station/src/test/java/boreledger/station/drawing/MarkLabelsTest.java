package boreledger.station.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.drawing.MarkLabels.Label;
import boreledger.station.drawing.MarkLabels.Wanted;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MarkLabelsTest {
  private final MarkLabels row = new MarkLabels(0, 200, 5);

  @Test
  void labelsFarApartStandInOneRowOverTheirLines() {
    List<Label> labels = row.place(List.of(over(40, 30), over(150, 30)));

    assertEquals(List.of(0, 0), labels.stream().map(Label::row).toList());
    assertEquals(List.of(25.0, 135.0), labels.stream().map(Label::from).toList());
  }

  @Test
  void neighboursMoveAsideBeforeTheyTakeAnotherRow() {
    List<Label> labels = row.place(List.of(over(90, 30), over(115, 30)));

    assertEquals(List.of(0, 0), labels.stream().map(Label::row).toList());
  }

  @Test
  void aLabelOfSomethingBeyondStandsAtTheEdge() {
    List<Label> labels = row.place(List.of(new Wanted("far", 200, 50, false)));

    assertEquals(200, labels.get(0).to());
  }

  @Test
  void twoLabelsOfOnePlaceStandAboveEachOther() {
    List<Label> labels = row.place(List.of(over(100, 40), over(100, 40)));

    assertEquals(List.of(0, 1), labels.stream().map(Label::row).sorted().toList());
    assertEquals(1, check(labels, "one place"));
  }

  @Test
  void fiveLabelsAnywhereNeitherOverlapNorCrossALead() {
    long seed = 7;
    Random random = new Random(seed);
    MarkLabels wide = new MarkLabels(0, 250, 5);
    int pairs = 0;
    for (int run = 0; run < 500; run++) {
      List<Wanted> wanted = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        wanted.add(over(random.nextDouble(75, 175), random.nextDouble(30, 70)));
      }
      wanted.add(new Wanted("b", 250, random.nextDouble(30, 70), false));
      wanted.add(new Wanted("c", 0, random.nextDouble(30, 70), false));
      pairs += check(wide.place(wanted), "seed " + seed + ", run " + run);
    }
    assertEquals(5000, pairs);
  }

  @Test
  void wherePlacesCannotBeFoundNothingIsLost() {
    MarkLabels narrow = new MarkLabels(0, 20, 5);

    List<Label> labels = narrow.place(List.of(over(5, 20), over(10, 20), over(15, 20)));

    assertEquals(List.of(0, 1, 2), labels.stream().map(Label::row).toList());
  }

  private static Wanted over(double x, double width) {
    return new Wanted("a", x, width, true);
  }

  private static int check(List<Label> labels, String what) {
    int pairs = 0;
    for (int i = 0; i < labels.size(); i++) {
      for (int j = i + 1; j < labels.size(); j++) {
        Label one = labels.get(i);
        Label other = labels.get(j);
        if (one.row() == other.row()) {
          boolean apart = one.to() <= other.from() || other.to() <= one.from();
          assertTrue(apart, () -> what + ": " + one + " " + other);
        } else {
          Label upper = one.row() > other.row() ? one : other;
          Label lower = upper == one ? other : one;
          boolean crossed =
              upper.wanted().leads()
                  && upper.wanted().x() > lower.from()
                  && upper.wanted().x() < lower.to();
          assertFalse(crossed, () -> what + ": " + upper + " " + lower);
        }
        pairs++;
      }
    }
    return pairs;
  }
}
