package boreledger.station.truth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The folder sample-captures holds what the model makes with its fixed seeds, byte for byte. With
 * {@code -Dboreledger.samples.write=true} the files are written first.
 */
class SampleCapturesAreWhatTheModelMakesTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", ".")).resolve("../sample-captures").normalize();
  private static final Map<String, String> MADE = SampleFolder.files();

  @BeforeAll
  static void writeWhenAsked() throws IOException {
    if (Boolean.getBoolean("boreledger.samples.write")) {
      Files.createDirectories(FOLDER);
      for (Map.Entry<String, String> file : MADE.entrySet()) {
        Files.writeString(FOLDER.resolve(file.getKey()), file.getValue());
      }
    }
  }

  @Test
  void eachFileHoldsTheModelsBytes() throws IOException {
    for (Map.Entry<String, String> file : MADE.entrySet()) {
      byte[] held = Files.readAllBytes(FOLDER.resolve(file.getKey()));
      assertArrayEquals(file.getValue().getBytes(StandardCharsets.UTF_8), held, file.getKey());
    }
    assertEquals(1 + 9 + 11 * 3, MADE.size(), "job, profiles, and three files per capture");
  }

  @Test
  void theFolderHoldsNothingElseButItsReadme() throws IOException {
    try (Stream<Path> held = Files.list(FOLDER)) {
      TreeSet<String> names =
          held.map(p -> p.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
      assertTrue(names.remove("README.md"), "README.md");
      assertEquals(new TreeSet<>(MADE.keySet()), names);
    }
  }

  @Test
  void theRockedCaptureStaysSmall() {
    assertTrue(MADE.get("bore-rocked.capture.jsonl").length() < 1_000_000);
  }
}
