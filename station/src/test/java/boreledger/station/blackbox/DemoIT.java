package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoIT {
  private static final Pattern OWN =
      Pattern.compile("(ledger|opened session|next:|taken \\d|done:|build sheet) ?");

  @TempDir Path folder;

  @Test
  void theDemoFillsALedger() {
    Path ledger = folder.resolve("demo.ledger");
    Launcher program = new ProcessLauncher(folder);
    Outcome demo = program.run("demo", "--headless", "--ledger", ledger.toString()).ended(1);
    assertTrue(demo.stdout().length() > 200, demo::toString);
    onlyItsOwnWords(demo.stderr());
    JsonNode cylinders =
        program
            .run("results", "--json", "--ledger", ledger.toString())
            .ended(1)
            .json()
            .path("cylinders");
    bores(cylinders);
    buildSheet(folder.resolve("demo.pdf"), demo.stdout());
  }

  @Test
  void withJsonTheDemoAnswersWithOneDocument() {
    Path ledger = folder.resolve("demo.ledger");
    Launcher program = new ProcessLauncher(folder);
    Outcome demo =
        program.run("demo", "--headless", "--json", "--ledger=" + ledger.toString()).ended(1);
    bores(demo.json().path("cylinders"));
  }

  /** A library that logs without being asked would stand between the lines of the gauging. */
  private static void onlyItsOwnWords(String stderr) {
    List<String> foreign = stderr.lines().filter(line -> !OWN.matcher(line).lookingAt()).toList();
    assertEquals(List.of(), foreign);
    assertTrue(stderr.lines().count() > 30, stderr);
  }

  private static void buildSheet(Path file, String words) {
    assertTrue(words.contains("Build sheet " + file), words);
    try (PDDocument sheet = Loader.loadPDF(file.toFile())) {
      String text = new PDFTextStripper().getText(sheet);
      assertEquals(3, text.split("\\RCylinder \\d, bore ", -1).length - 1, text);
      assertTrue(text.contains("page 1 of " + sheet.getNumberOfPages()), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void bores(JsonNode cylinders) {
    JsonNode truth = Json.file(Program.sample("bore-rocked.expected.json")).path("cylinders");
    int compared = 0;
    for (int i = 0; i < 3; i++) {
      for (JsonNode place : truth.get(i).path("bore").path("positions")) {
        JsonNode answer =
            Json.position(
                cylinders.get(i).path("bore").path("positions"),
                place.path("depth_mm").asDouble(),
                place.path("axis").asText());
        assertEquals(
            place.path("true_diameter_mm").asDouble(),
            answer.path("diameter_mm").asDouble(Double.NaN),
            0.004,
            answer::toString);
        compared++;
      }
    }
    assertEquals(18, compared);
  }
}
