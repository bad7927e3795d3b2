package boreledger.station.bench.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileWindowsTest {
  @TempDir Path folder;

  @Test
  void aFolderThatIsNotThereGivesWayToItsNearestParentThatIs() {
    assertEquals(Optional.of(folder), FileWindows.nearest(folder));
    assertEquals(Optional.of(folder), FileWindows.nearest(folder.resolve("a").resolve("b")));
  }

  @Test
  void anEndingIsAddedOnlyWhereNoneWasTyped() {
    Path bare = folder.resolve("mill");

    assertEquals(folder.resolve("mill.job.toml"), FileWindows.withEnding(bare, ".job.toml"));
    Path typed = folder.resolve("mill.toml");
    assertEquals(typed, FileWindows.withEnding(typed, ".job.toml"));
  }
}
