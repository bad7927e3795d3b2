package boreledger.station.bench.bores;

import boreledger.station.bench.House;
import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.gaps.GapsModel;
import boreledger.station.bench.gaps.GapsRoom;
import boreledger.station.bench.gaps.GapsStates;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Draws the rooms that show findings, for people to look at: {@code -Dbench.snapshots=FOLDER}. */
@EnabledIfSystemProperty(named = "bench.snapshots", matches = ".+")
class FindingSnapshots {
  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @Test
  void bores() throws Exception {
    draw(
        "bores",
        house -> {
          Findings findings = new Findings(house.around());
          BoresModel model = new BoresModel(findings, house.around());
          model.cylinder().set(2);
          return BoresRoom.of(model);
        });
  }

  @Test
  void gaps() throws Exception {
    draw(
        "gaps",
        house -> {
          Findings findings = new Findings(house.around());
          GapsModel model =
              new GapsModel(findings, house.around(), new Memory(null), house::filing);
          model.cylinder().set(2);
          return GapsRoom.of(model);
        });
  }

  @Test
  void gapsFiledAndSupposedOtherwise() throws Exception {
    draw("gaps-filed", GapsStates::filedAndSupposed);
    Language.speak(Language.GERMAN);
    draw("gaps-filed-de", GapsStates::filedAndSupposed);
    Language.speak(Language.ENGLISH);
  }

  private void draw(String name, Function<House, Room> make) throws Exception {
    House house =
        House.gauged(
            Files.createTempDirectory(folder, name), "bore-rocked", "gap-top", "gap-second");
    House empty = House.empty(folder.resolve("none"));
    Path out = Path.of(System.getProperty("bench.snapshots"));
    WaitForAsyncUtils.asyncFx(
            () -> {
              for (Language language : Language.values()) {
                Language.speak(language);
                String spoken = name + "-" + language.title().toLowerCase(Locale.ROOT);
                RoomPictures.draw(house, make.apply(house), out, spoken);
                RoomPictures.draw(empty, make.apply(empty), out, spoken + "-empty");
              }
              Language.speak(Language.ENGLISH);
              return null;
            })
        .get();
  }
}
