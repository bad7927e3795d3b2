package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** How a run of the program ended: its exit status and everything it printed. */
public record Outcome(List<String> args, int exit, String stdout, String stderr) {

  /** The lines on standard error that are not blank. */
  public List<String> errorLines() {
    return stderr.lines().filter(line -> !line.isBlank()).toList();
  }

  /** Standard output, which must be one JSON document and nothing else. */
  JsonNode json() {
    return Json.only(stdout, this);
  }

  /** Fails unless the program ended with this status. */
  Outcome ended(int status) {
    assertEquals(status, exit, this::toString);
    return noTrace();
  }

  /** Fails when a stack trace was printed. */
  Outcome noTrace() {
    boolean trace =
        (stdout + "\n" + stderr)
            .lines()
            .anyMatch(line -> line.matches("\\s+at [\\w$./@]+\\(.*\\)\\s*"));
    assertFalse(trace, () -> "stack trace in " + this);
    return this;
  }

  /** Fails unless the run was refused with this status and one line on standard error. */
  String refused(int status) {
    ended(status);
    assertEquals(1, errorLines().size(), () -> "one line on standard error: " + this);
    if (!stdout.isBlank()) {
      json(); // an answer to a refused call can only be a document for machines
    }
    return errorLines().get(0);
  }

  @Override
  public String toString() {
    return "boreledger %s%nexit %d%nstdout: %s%nstderr: %s"
        .formatted(String.join(" ", args), exit, stdout, stderr);
  }
}
