package boreledger.station.bench.ledger;

import boreledger.station.bench.House;
import boreledger.station.bench.RoomPictures;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Draws the room of the ledger, for people to look at: {@code -Dbench.snapshots=FOLDER}. */
@EnabledIfSystemProperty(named = "bench.snapshots", matches = ".+")
class LedgerSnapshots {
  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @Test
  void everyState() throws Exception {
    for (String state : LedgerStates.ALL.keySet()) {
      Path own = Files.createDirectory(folder.resolve(state));
      WaitForAsyncUtils.asyncFx(
              () -> {
                RoomPictures.draw(
                    House.empty(own),
                    LedgerRoom.of(LedgerStates.ALL.get(state).reach(own)),
                    Path.of(System.getProperty("bench.snapshots")),
                    "ledger-" + state);
                return null;
              })
          .get();
    }
  }
}
