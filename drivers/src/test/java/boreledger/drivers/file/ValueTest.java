package boreledger.drivers.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ValueTest {
  private static Value value(String text) throws FileProblem {
    return StrictToml.parse("f", "k = " + text).required("k");
  }

  @Test
  void wholeNumberIsANumberToo() throws Exception {
    assertEquals(96.0, value("96").number());
    assertEquals(-0.012, value("-0.012").number());
    assertEquals(10.8e-6, value("10.8e-6").number());
  }

  @ParameterizedTest
  @ValueSource(strings = {"inf", "-inf", "nan"})
  void numberThatIsNotFiniteIsRefused(String text) {
    String shown =
        String.valueOf(Double.parseDouble(text.replace("inf", "Infinity").replace("nan", "NaN")));
    assertEquals(
        "f:1:5: k is " + shown + ", expected a number", Problem.of(() -> value(text).number()));
  }

  @Test
  void numberThatIsTextIsRefused() {
    assertEquals(
        "f:1:5: k is \"0.5 mm\", expected a number", Problem.of(() -> value("'0.5 mm'").number()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0.0", "-0.0", "-1.5"})
  void numberNotAboveZeroIsRefusedAsPositive(String text) {
    assertEquals(
        "f:1:5: k is " + text + ", expected a number above 0",
        Problem.of(() -> value(text).positive()));
  }

  @Test
  void numberOutsideItsRangeIsRefused() throws Exception {
    assertEquals(80.0, value("80").number(-40, 80));
    assertEquals(
        "f:1:5: k is 80.5, expected a number from -40.0 to 80.0",
        Problem.of(() -> value("80.5").number(-40, 80)));
  }

  @Test
  void integerAtItsLimitsIsGiven() throws Exception {
    assertEquals(5, value("5").integer(5, 8));
    assertEquals(8, value("8").integer(5, 8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"4", "9", "8.0", "9223372036854775807", "true"})
  void anythingElseIsNoIntegerOfTheRange(String text) {
    assertEquals(
        "f:1:5: k is " + text + ", expected a whole number from 5 to 8",
        Problem.of(() -> value(text).integer(5, 8)));
  }

  @Test
  void flagIsTrueOrFalse() throws Exception {
    assertEquals(true, value("true").flag());
    assertEquals("f:1:5: k is 1, expected true or false", Problem.of(() -> value("1").flag()));
  }

  @Test
  void blankTextIsRefused() {
    assertEquals("f:1:5: k is \" \", expected a text", Problem.of(() -> value("' '").string()));
  }

  @Test
  void wordStandsForItsMeaning() throws Exception {
    Map<String, Integer> words = new LinkedHashMap<>();
    words.put("none", 0);
    words.put("even", 2);
    assertEquals(2, value("'even'").oneOf(words));
    assertEquals(
        "f:1:5: k is \"Even\", expected one of \"none\", \"even\"",
        Problem.of(() -> value("'Even'").oneOf(words)));
  }

  @Test
  void arraysAreGivenInOrder() throws Exception {
    assertEquals(List.of(12.0, 60.5), value("[12, 60.5]").numbers());
    assertEquals(List.of("a", "b"), value("['a', 'b']").strings());
    assertEquals(List.of(), value("[]").numbers());
  }

  @Test
  void wrongItemIsRefusedAtItsOwnPlace() {
    assertEquals(
        "f:2:2: item 2 of k is \"x\", expected a number",
        Problem.of(() -> value("[12.0,\n 'x']").numbers()));
  }

  @Test
  void arrayInAnArrayOfNumbersIsRefused() {
    assertEquals(
        "f:1:6: item 1 of k is an array, expected a number",
        Problem.of(() -> value("[[1]]").numbers()));
  }

  @Test
  void anythingElseIsNoArray() {
    assertEquals(
        "f:1:5: k is a table, expected an array", Problem.of(() -> value("{a = 1}").numbers()));
    assertEquals("f:1:5: k is 12.0, expected an array", Problem.of(() -> value("12.0").list()));
  }

  @Test
  void anythingElseIsNoTable() {
    assertEquals(
        "f:1:5: k is 2020-01-02, expected a table [k]",
        Problem.of(() -> value("2020-01-02").table()));
  }

  @Test
  void anythingElseIsNoArrayOfTables() {
    assertEquals(
        "f:1:5: k is a table, expected tables [[k]]", Problem.of(() -> value("{}").tables()));
    assertEquals(
        "f:1:6: item 1 of k is 1, expected a table", Problem.of(() -> value("[1]").tables()));
  }

  @Test
  void inlineTablesAreTables() throws Exception {
    assertEquals(1, value("[{a = 1}]").tables().get(0).required("a").integer(0, 9));
  }

  @Test
  void longTextIsShownCut() {
    assertEquals(
        "f:1:5: k is \"" + "x".repeat(60) + "...\", expected a number",
        Problem.of(() -> value("'" + "x".repeat(61) + "'").number()));
  }
}
