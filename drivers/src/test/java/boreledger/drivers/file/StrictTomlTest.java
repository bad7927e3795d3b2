package boreledger.drivers.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrictTomlTest {
  @TempDir Path folder;

  @Test
  void fileGivesItsTable() throws Exception {
    Path file = Files.writeString(folder.resolve("bore.toml"), "bore_mm = 96\n");
    assertEquals(96.0, StrictToml.read(file).required("bore_mm").number());
  }

  @Test
  void problemsNameTheFileAsItWasNamed() throws Exception {
    Path file = Files.writeString(folder.resolve("bore.toml"), "x = 1\nbore_mm = 'wide'\n");
    Table table = StrictToml.read(file);
    assertEquals(
        file + ":2:11: bore_mm is \"wide\", expected a number",
        Problem.of(() -> table.required("bore_mm").number()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a =             | 1:4: not TOML: Unexpected end of input, expected a value
          a = 1~a = 2     | 2:1: not TOML: a previously defined at line 1, column 1
          a = 1~[b]~[b]   | 3:1: not TOML: b previously defined at line 2, column 1
          a = 1e999       | 1:5: not TOML: Float is too large
          a = [1, 2~b = 3 | 1:10: not TOML: Unexpected end of line, expected ] or a comma
          """)
  void syntaxErrorIsRefusedWithItsPlace(String text, String expected) {
    String message = Problem.of(() -> StrictToml.parse("f", text.replace('~', '\n')));
    assertEquals("f:" + expected, message);
  }

  @Test
  void byteOrderMarkInFrontIsPassedOver() throws Exception {
    assertEquals(1, StrictToml.parse("f", "\uFEFFa = 1").required("a").integer(0, 9));
  }

  @Test
  void fileLargerThanTheBoundIsRefused() throws Exception {
    Path file = Files.write(folder.resolve("huge.toml"), new byte[StrictToml.MAX_BYTES + 1]);
    assertEquals(
        file + ": larger than 1048576 bytes, expected a smaller file",
        Problem.of(() -> StrictToml.read(file)));
  }

  @Test
  void anyTextIsReadOrRefusedInOneLine() {
    String alphabet = "ab=[]{}\"'#.,\n\r\t 01\u0000\u0085\u2028é-+e_";
    int refused = 0;
    for (int seed = 0; seed < 5000; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(24); i >= 0; i--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      try {
        StrictToml.parse("f", text.toString()).done();
      } catch (FileProblem e) {
        refused++;
        assertTrue(e.getMessage().matches("f:\\d+:\\d+: [^\\p{Cc}\u2028]+"), "seed " + seed);
      }
    }
    assertFalse(refused == 0);
  }
}
