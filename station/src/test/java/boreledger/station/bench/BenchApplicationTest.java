package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opens the bench in a Java machine of its own, since the toolkit can be started once only. */
class BenchApplicationTest {
  @TempDir Path folder;

  @Test
  void showReturnsWhenTheWindowIsClosedAfterSeveralSessionsAndNothingKeepsRunning()
      throws IOException, InterruptedException {
    assertEquals(
        List.of("opened", "seen Plan done", "seen 9 of 9 readings", "returned"),
        run(BenchDriver.class, "0"));
  }

  @Test
  void aGaugeThatTypesIsHeardAndKeysSkipTakeBackAndGoElsewhere()
      throws IOException, InterruptedException {
    assertEquals(
        List.of(
            "seen Taken: cylinder 1, top ring, 12 mm, 0.4800 mm",
            "seen Skipped: cylinder 1, top ring, 60 mm. It waits until the end",
            "seen Taken: cylinder 1, top ring, 108 mm, 0.4700 mm",
            "seen Taken back: cylinder 1, top ring, 108 mm, 0.4700 mm. Press in free air again to"
                + " restore it",
            "seen Taken: cylinder 1, top ring, 108 mm, 0.4710 mm",
            "seen Going to cylinder 1, top ring, 60 mm",
            "seen To be gauged again: cylinder 1, top ring, 12 mm. Its reading counts until there"
                + " is a new one",
            "seen Taken: cylinder 1, top ring, 12 mm, 0.4820 mm",
            "seen Sound off key M",
            "seen 2 of 9 readings",
            "returned"),
        run(HandsDriver.class));
  }

  /** What a program that opens the window prints. */
  private List<String> run(Class<?> driver, String... more)
      throws IOException, InterruptedException {
    Path output = folder.resolve("output.txt");
    List<String> command = command(driver);
    command.addAll(List.of(more));
    ProcessBuilder program =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile());
    program.environment().put("XDG_CONFIG_HOME", folder.resolve("settings").toString());
    Process process = program.start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    process.destroyForcibly();

    List<String> lines = Files.readAllLines(output, StandardCharsets.UTF_8);
    assertTrue(ended, "still running: " + lines);
    assertEquals(0, process.exitValue(), lines::toString);
    return lines.stream()
        .filter(line -> line.matches("(seen|opened|returned|Exception).*"))
        .toList();
  }

  private List<String> command(Class<?> driver) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // The screen is the same headless one as in this machine.
    for (String name : List.of("glass.platform", "monocle.platform", "prism.order")) {
      command.add("-D" + name + "=" + System.getProperty(name));
    }
    // The words looked for are English.
    command.add("-Duser.language=en");
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(driver.getName());
    command.add(folder.toString());
    return command;
  }
}
