package boreledger.station.bench.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import boreledger.station.session.SmallGauge;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said when a learned profile cannot be written. */
class KeepModelTest {
  @TempDir Path folder;
  private final List<Path> written = new ArrayList<>();
  private KeepModel keep;

  @BeforeEach
  void aProfileThatWasLearned() {
    keep = new KeepModel(House.empty(folder).around(), written::add);
    keep.learned(SmallGauge.deviation().text());
    keep.name().set("Old faithful");
  }

  @Test
  void aFolderThatIsNotThereIsNamedWithWhatToDo() {
    Path file = folder.resolve("none").resolve("old.gauge.toml");
    keep.file().set(file.toString());

    keep.write();

    assertEquals(
        "Not written: there is no such folder as that of "
            + file
            + "; make it, or choose another one",
        keep.fileProblem().get());
    assertEquals(List.of(), written);
  }

  @Test
  void aNameThatNoFileCanHaveIsRefused() {
    keep.file().set("a\0b");

    keep.write();

    assertEquals("a\0b cannot be a file", keep.fileProblem().get());
  }

  @Test
  void elseItIsThere() {
    Path file = folder.resolve("old.gauge.toml");
    keep.file().set(file.toString());

    keep.write();

    assertEquals("", keep.fileProblem().get());
    assertEquals(List.of(file), written);
    assertTrue(Files.exists(file));
  }
}
