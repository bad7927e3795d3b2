package boreledger.drivers.fuzz;

import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Any text as a profile or a capture: it is read, or refused as a problem of one line. */
class FileFuzzTest {
  private static void assertPlain(FileProblem problem) {
    if (problem.getMessage().chars().anyMatch(Character::isISOControl)) {
      throw new AssertionError("not one plain line: " + problem.getMessage(), problem);
    }
  }

  /** The text follows a table that must be there, so that deeper keys are reached sooner. */
  @FuzzTest(maxDuration = "5m")
  void profiles(FuzzedDataProvider data) {
    String head =
        "format='boreledger-gauge/1'\nname='g'\nreads='size'\nunit='mm'\nresolution_mm=0.001\n"
            + "max_error_mm=0.002\npick={rule='press'}\n";
    String start =
        data.pickValue(
            new String[] {
              "",
              head,
              head + "[frame]\nkind='line'\nends_with='x'\nmax_bytes=9\n[decode]\n",
              head + "[frame]\nkind='fixed'\nbytes=9\n[decode]\nkind='integer'\n",
              head + "[frame]\nkind='modbus-rtu'\n[decode]\nkind='modbus-registers'\n",
              head
                  + "[frame]\nkind='silence'\nquiet_ms=1\nmax_bytes=9\n"
                  + "[decode]\npattern='(?<value>.)'\n[[check]]\n",
              head
                  + "[frame]\nkind='silence'\nquiet_ms=1\nmax_bytes=9\n"
                  + "[decode]\npattern='(?<value>.)'\n[ask]\n"
            });
    try {
      GaugeProfile profile = GaugeProfiles.parse("g", start + data.consumeRemainingAsString());
      if (!(profile.resolutionMm() > 0) || profile.frame().maxBytes() < 1) {
        throw new AssertionError(profile.toString());
      }
    } catch (FileProblem e) {
      assertPlain(e);
    }
  }

  @FuzzTest(maxDuration = "5m")
  void captures(byte[] content) throws IOException {
    Path file = Files.createTempFile("fuzz", CaptureFiles.ENDING);
    try {
      Files.write(file, content);
      CaptureFiles.read(file);
    } catch (FileProblem e) {
      assertPlain(e);
    } finally {
      Files.delete(file);
    }
  }
}
