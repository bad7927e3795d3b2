package boreledger.station.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class RangeTest {
  @Test
  void withoutValuesItSpansTheMarks() {
    assertEquals(new Range(0.30, 0.75), Range.of(List.of(), List.of(0.30, 0.75, 0.60), 0.1, 3));
  }

  @Test
  void aMarkNearTheValuesIsReached() {
    assertEquals(new Range(0.30, 0.50), Range.of(List.of(0.4, 0.5), List.of(0.30), 0.05, 3));
  }

  @Test
  void aMarkFarFromTheValuesIsNot() {
    assertEquals(new Range(0.40, 0.50), Range.of(List.of(0.4, 0.5), List.of(0.15), 0.05, 3));
  }

  @Test
  void fewValuesAreGivenTheLeastSpanAboutTheirMiddle() {
    assertEquals(new Range(1.5, 2.5), Range.of(List.of(2.0), List.of(), 1, 3));
  }
}
