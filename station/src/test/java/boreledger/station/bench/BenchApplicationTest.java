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
    Path output = folder.resolve("output.txt");
    ProcessBuilder program =
        new ProcessBuilder(command()).redirectErrorStream(true).redirectOutput(output.toFile());
    program.environment().put("XDG_CONFIG_HOME", folder.resolve("settings").toString());
    Process process = program.start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    process.destroyForcibly();

    List<String> lines = Files.readAllLines(output, StandardCharsets.UTF_8);
    assertTrue(ended, "still running: " + lines);
    assertEquals(
        List.of("opened", "seen Plan done", "seen 9 of 9 readings", "returned"),
        lines.stream().filter(line -> line.matches("(seen|opened|returned|Exception).*")).toList(),
        lines::toString);
    assertEquals(0, process.exitValue());
  }

  private List<String> command() {
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
    command.add(BenchDriver.class.getName());
    command.add(folder.toString());
    command.add("0");
    return command;
  }
}
