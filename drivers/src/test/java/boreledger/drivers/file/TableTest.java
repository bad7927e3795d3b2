package boreledger.drivers.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
  private static Table parse(String text) throws FileProblem {
    return StrictToml.parse("f", text);
  }

  @Test
  void optionalKeyMayBeLeftOut() throws Exception {
    Table table = parse("a = 1");
    assertTrue(table.optional("a").isPresent());
    assertFalse(table.optional("b").isPresent());
    assertNull(table.numberOrNull("b"));
    assertNull(table.stringOrNull("b"));
    assertEquals(List.of(), table.tables("b"));
  }

  @Test
  void optionalKeyOfTheWrongTypeIsRefused() throws Exception {
    Table table = parse("a = 1\nb = true");
    assertEquals("f:2:5: b is true, expected a number", Problem.of(() -> table.numberOrNull("b")));
    assertEquals("f:1:5: a is 1, expected a text", Problem.of(() -> table.stringOrNull("a")));
  }

  @Test
  void missingKeyIsRefusedAtItsTable() throws Exception {
    Table line = parse("a = 1\n\n[line]\nparity = 'none'\n").table("line");
    assertEquals(
        "f:3:1: missing baud in [line], which is required",
        Problem.of(() -> line.required("baud")));
  }

  @Test
  void missingKeyOfTheFileIsRefusedAtItsStart() throws Exception {
    Table table = parse("\n\nname = 'x'\n");
    assertEquals(
        "f:1:1: missing format, which is required", Problem.of(() -> table.required("format")));
  }

  @Test
  void missingKeyTellsOfOneThatIsNearlyIt() throws Exception {
    Table table = parse("name = 'x'\nformta = 'y'\n");
    assertEquals(
        "f:1:1: missing format, which is required; line 2 has formta",
        Problem.of(() -> table.required("format")));
  }

  @Test
  void missingTableIsAMissingKey() throws Exception {
    Table table = parse("a = 1");
    assertEquals("f:1:1: missing line, which is required", Problem.of(() -> table.table("line")));
  }

  @Test
  void keysAllAskedForAreDone() throws Exception {
    Table table = parse("a = 1\n[b]\nc = 2\n[[d]]\ne = 3\n[[d]]\n");
    table.required("a");
    table.table("b").required("c");
    for (Table d : table.tables("d")) {
      d.optional("e");
    }
    table.done();
  }

  @Test
  void unknownKeyIsRefusedWithTheNearestKnownOne() throws Exception {
    Table table = parse("resolution_mm = 1\n  repeatabilty_mm = 2\n");
    table.required("resolution_mm");
    table.optional("repeatability_mm");
    assertEquals(
        "f:2:3: unknown key repeatabilty_mm, did you mean repeatability_mm?",
        Problem.of(table::done));
  }

  @Test
  void unknownKeyLikeNoneIsRefusedWithAllKnownOnes() throws Exception {
    Table table = parse("[line]\nbaud = 9600\ncolour = 'red'\n");
    Table line = table.table("line");
    line.required("baud");
    line.optional("parity");
    assertEquals(
        "f:3:1: unknown key colour in [line], expected one of baud, parity",
        Problem.of(table::done));
  }

  @Test
  void unknownKeyInTheSecondOfManyTablesIsRefused() throws Exception {
    Table table = parse("[[ring]]\nname = 'top'\n[[ring]]\nnam = 'second'\n");
    for (Table ring : table.tables("ring")) {
      ring.optional("name");
    }
    assertEquals("f:4:1: unknown key nam in [[ring]], did you mean name?", Problem.of(table::done));
  }

  @Test
  void tableNeverOpenedIsUnknown() throws Exception {
    Table table = parse("a = 1\n[lime]\nbaud = 9600\n");
    table.required("a");
    table.optional("line");
    assertEquals("f:2:1: unknown key lime, did you mean line?", Problem.of(table::done));
  }

  @Test
  void unknownKeyWithControlCharactersStaysOnOneLine() throws Exception {
    Table table = parse("\"x\\ny\" = 1\n");
    table.optional("somewhere");
    assertEquals("f:1:1: unknown key x?y, expected one of somewhere", Problem.of(table::done));
  }
}
