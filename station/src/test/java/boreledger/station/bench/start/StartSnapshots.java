package boreledger.station.bench.start;

import boreledger.drivers.capture.Measure;
import boreledger.station.bench.House;
import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.Language;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Draws the room to start in, for people to look at: {@code -Dbench.snapshots=FOLDER}. */
@EnabledIfSystemProperty(named = "bench.snapshots", matches = ".+")
class StartSnapshots {
  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @Test
  void theFirstDay() throws Exception {
    draw("start-first", model -> {});
  }

  @Test
  void aJobIsOpenAndAGaugeIsTried() throws Exception {
    draw(
        "start-open",
        model -> {
          model.job().open(House.SAMPLES.resolve("pumphouse-three.job.toml"));
          model.measuring().measure().set(Measure.GAP);
          model.gauge().practising().set(false);
          model.gauge().lookForPorts();
          model.measuring().settingTemp().set("20,4");
          model.measuring().blockTemp().set("warm");
          model.gauge().port().set("/dev/ttyUSB0");
          model.trial().start(model.gauge().profile().get().gauge(), "/dev/ttyUSB0");
          model.begin();
        });
  }

  @Test
  void aGaugeIsTaught() throws Exception {
    draw("lesson-first", Lessons::atFirst);
    draw("lesson-half", model -> Lessons.halfWay(model, folder));
    draw("lesson-certain", model -> Lessons.certain(model, folder));
  }

  @Test
  void aGaugeIsTaughtInGerman() throws Exception {
    Language.speak(Language.GERMAN);
    draw("lesson-certain-de", model -> Lessons.certain(model, folder));
    draw("lesson-half-de", model -> Lessons.halfWay(model, folder));
    Language.speak(Language.ENGLISH);
  }

  private void draw(String name, java.util.function.Consumer<StartModel> state) throws Exception {
    House house = House.empty(folder);
    WaitForAsyncUtils.asyncFx(
            () -> {
              StartModel model =
                  new StartModel(new FakeStart(), house.around(), new Memory(null), "bench", 1);
              Room room = StartRoom.of(model, house.appearance());
              state.accept(model);
              RoomPictures.draw(house, room, Path.of(System.getProperty("bench.snapshots")), name);
              return null;
            })
        .get();
  }
}
