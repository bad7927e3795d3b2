package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadsheetTextTest {
  /** The signs that OWASP's page "CSV Injection" names, their wide forms among them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=HYPERLINK(\"x\")",
        "+1",
        "-2+3+cmd|' /C calc'!A0",
        "@SUM(1)",
        "\tx",
        "\rx",
        "\nx",
        "\uff1dx",
        "\uff0bx",
        "\uff0dx",
        "\uff20x",
        "'quoted"
      })
  void aTextThatCouldBeAFormulaHasAnApostropheBeforeIt(String text) {
    assertEquals("'" + text, SpreadsheetText.guarded(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Pumphouse three", "a=b", "1+1", "ä"})
  void otherTextStandsAsItIs(String text) {
    assertEquals(text, SpreadsheetText.guarded(text));
  }

  @Test
  void whatIsNotKnownIsAnEmptyCell() {
    assertEquals("", SpreadsheetText.guarded(null));
  }
}
