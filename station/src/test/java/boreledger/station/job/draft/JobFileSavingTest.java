package boreledger.station.job.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobFileSavingTest {
  @TempDir Path folder;

  @Test
  void theOldFileIsKeptBesideUnderANameThatIsFree() throws Exception {
    Path file = folder.resolve("a.job.toml");
    Files.writeString(file, "one");

    JobFileSaving.save(file, "two", true);
    JobFileSaving.save(file, "three", true);
    JobFileSaving.save(file, "four", false);

    assertEquals("four", Files.readString(file));
    assertEquals("one", Files.readString(folder.resolve("a.job.toml.before")));
    assertEquals("two", Files.readString(folder.resolve("a.job.toml.before-2")));
    try (var names = Files.list(folder)) {
      assertEquals(3, names.count(), "nothing half-written is left");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      value = {
        "a = 1 # why | true",
        "a = \"#1\" | false",
        "a = '#1' | false",
        "a = \"x \\\" #\" | false",
        "a = \"\"\"x # y\"\"\" | false",
        "a = '''it's # y''' | false",
        "a = \"x\" # y | true",
        "a = 1 | false",
      })
  void aCommentIsToldFromASignInAString(String toml, boolean isComment) {
    assertEquals(isComment, Comments.in(toml));
  }

  @Test
  void aFileIsNamedAfterItsJob() {
    assertEquals(
        List.of("pumphouse-three.job.toml", "new.job.toml", "job-con.job.toml", "a-b.job.toml"),
        List.of(" Pumphouse three!", "/..", "CON", "a/../b").stream()
            .map(JobFileName::of)
            .toList());
  }
}
