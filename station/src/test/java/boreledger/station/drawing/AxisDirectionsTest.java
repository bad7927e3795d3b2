package boreledger.station.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxisDirectionsTest {
  @Test
  void theThrustAxisLiesAcrossTheCrankshaftAndThePinAxisAlongIt() {
    assertEquals(90, AxisDirections.deg(List.of("thrust", "pin"), 0));
    assertEquals(0, AxisDirections.deg(List.of("thrust", "pin"), 1));
    assertEquals(0, AxisDirections.deg(List.of("pin", "thrust"), 0));
    assertEquals(90, AxisDirections.deg(List.of("pin", "thrust"), 1));
  }

  @Test
  void furtherAxesAreSpacedEvenly() {
    List<String> axes = List.of("thrust", "left", "pin", "right");

    assertEquals(135, AxisDirections.deg(axes, 1));
    assertEquals(45, AxisDirections.deg(axes, 3));
  }

  @Test
  void whereNeitherIsNamedTheFirstLiesAcross() {
    assertEquals(90, AxisDirections.deg(List.of("a", "b", "c"), 0));
  }
}
