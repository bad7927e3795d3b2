package boreledger.station.job.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One inch is 25.4 mm exactly (ISO 31-1 and the agreement of 1959). */
class NumeralsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | 96 | 96.0",
        "LENGTH | 96,03 | 96.03",
        "LENGTH | 96.030 mm | 96.03",
        "LENGTH | 96mm | 96.0",
        "LENGTH | 3.78 in | 96.012",
        "LENGTH | 3,78\" | 96.012",
        "LENGTH | 2 um | 0.002",
        "LENGTH | \u22120.5 | -0.5",
        "LENGTH | .5 | 0.5",
        "LENGTH | 9.6e1 | 96.0",
        "LENGTHS | 12 60,5 108 | 12.0, 60.5, 108.0",
        "LENGTHS | 12; 60,5; 108; | 12.0, 60.5, 108.0",
        "LENGTHS | 12, 60.5, 108 | 12.0, 60.5, 108.0",
        "LENGTHS | 1 2 in | 25.4, 50.8",
        "LENGTHS | 1 in; 2 mm | 25.4, 2.0",
        "LENGTHS | 1 in 2 in | 25.4, 50.8",
        "ANGLES | 0\u00b0 120\u00b0 240\u00b0 | 0.0, 120.0, 240.0",
        "CELSIUS | 190 \u00b0C | 190.0",
        "COUNT | 3 | 3",
        "COUNT | 3.0 | 3",
        "COEFFICIENT | 10.8 | 10.8e-6",
        "COEFFICIENT | 10.8e-6 | 10.8e-6",
        "COEFFICIENT | 0.0000108 | 10.8e-6",
      })
  void whatPeopleTypeIsUnderstoodExactly(Kind kind, String typed, String inFile) {
    assertEquals(inFile, TomlText.of(kind, typed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | ninety | NO_NUMBER",
        "LENGTH | 96 97 | NO_NUMBER",
        "LENGTH | 1,000.5 | WHICH_COMMA",
        "LENGTH | 96 ft | OTHER_UNIT",
        "LENGTH | NaN | NO_NUMBER",
        "LENGTH | 1e999 | NO_NUMBER",
        "LENGTHS | 12,60,108 | WHICH_COMMA",
        "LENGTHS | 12 ,60 | NO_NUMBER",
        "CELSIUS | 400 \u00b0F | OTHER_UNIT",
        "COUNT | 3.5 | NO_COUNT",
        "COUNT | three | NO_COUNT",
      })
  void whatCouldMeanSomethingElseIsNotUnderstood(Kind kind, String typed, Fault fault) {
    assertEquals(fault, Numerals.read(kind, typed).fault());
  }

  @Test
  void nothingTypedIsNoNumberAndNoFault() {
    assertEquals(new Typed(java.util.List.of(), null, false), Numerals.read(Kind.LENGTH, "  "));
  }
}
