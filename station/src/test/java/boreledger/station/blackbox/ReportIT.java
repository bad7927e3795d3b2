package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The build sheet of the packaged program, read by tools that are none of the project's. */
class ReportIT {
  @TempDir Path folder;
  private Path sheet;
  private JsonNode answer;

  @BeforeEach
  void makeASheet() {
    Path ledger = folder.resolve("demo.ledger");
    sheet = folder.resolve("sheet.pdf");
    Launcher program = new ProcessLauncher(folder);
    program.run("demo", "--headless", "--ledger", ledger.toString()).ended(1);
    answer =
        program
            .run(
                "report",
                "--json",
                "--ledger",
                ledger.toString(),
                "--out",
                sheet.toString(),
                "--paper",
                "letter")
            .ended(1)
            .json();
  }

  @Test
  void anotherReaderFindsItsWords() throws Exception {
    Path text = folder.resolve("sheet.txt");
    run("pdftotext", sheet.toString(), text.toString());

    String words = Files.readString(text).replaceAll("\\s+", " ");
    assertTrue(words.contains("Pumphouse three"), words);
    assertTrue(words.contains("ledger head " + answer.path("ledger_head").asText()), words);
    int pages = answer.path("pages").asInt();
    assertTrue(words.contains("page " + pages + " of " + pages), words);
    assertTrue(words.contains("± 0.00"), words);
  }

  @Test
  void anotherRendererDrawsEveryPage() throws Exception {
    run("pdftoppm", "-r", "40", "-gray", sheet.toString(), folder.resolve("page").toString());

    int pages = 0;
    for (Path page : images()) {
      byte[] image = Files.readAllBytes(page);
      // A binary grey map begins with three lines of text; ink is darker than paper.
      long dark = 0;
      for (int i = 20; i < image.length; i++) {
        dark += (image[i] & 0xff) < 128 ? 1 : 0;
      }
      long ink = dark;
      assertTrue(ink > 300 && ink < image.length / 4, () -> page + " has " + ink + " dark dots");
      pages++;
    }
    assertEquals(answer.path("pages").asInt(), pages);
  }

  private List<Path> images() throws Exception {
    try (var files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".pgm")).toList();
    }
  }

  private static void run(String... command) throws Exception {
    boolean there =
        Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
            .anyMatch(place -> Files.isExecutable(Path.of(place, command[0])));
    assumeTrue(there, command[0] + " is not installed");
    Process process = new ProcessBuilder(command).inheritIO().start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "in time");
    assertEquals(0, process.exitValue());
  }
}
