package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.GaugingDesk;
import boreledger.station.app.TypedValues;
import boreledger.station.bench.bores.BoresModel;
import boreledger.station.bench.bores.BoresRoom;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.gaps.GapsModel;
import boreledger.station.bench.gaps.GapsRoom;
import boreledger.station.bench.gaps.GapsStates;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.start.Lessons;
import boreledger.station.bench.start.StartModel;
import boreledger.station.bench.start.StartRoom;
import boreledger.station.bench.window.StationScene;
import boreledger.station.bench.words.Language;
import boreledger.station.job.DisplayUnit;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** No room cuts words off, covers them or lets them stand outside, at the sizes named. */
class RoomLayoutTest {
  private static final double[][] SIZES = {
    {1016, 660}, {1024, 700}, {1280, 800}, {1920, 1080}, {2560, 1440}, {3840, 2160}
  };

  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @ParameterizedTest
  @EnumSource
  void startOnTheFirstDayAndWithAJobOpen(Language language) throws Exception {
    Language.speak(language);
    House house = House.empty(folder);
    fits(house, RoomLayoutTest::start, 12);
    house.appearance().language().set(language.next());
    fits(
        house,
        ignored -> {
          StartModel model = startModel(house);
          model.job().open(House.SAMPLES.resolve("pumphouse-three.job.toml"));
          model.measuring().measure().set(Measure.GAP);
          model.gauge().practising().set(false);
          model.measuring().blockTemp().set("warm");
          model.begin();
          return StartRoom.of(model, house.appearance());
        },
        20);
  }

  @ParameterizedTest
  @EnumSource
  void aGaugeBeingTaughtAtEveryMoment(Language language) throws Exception {
    Language.speak(language);
    House house = House.empty(folder);
    fits(house, ignored -> taught(house, Lessons::atFirst), 10);
    fits(house, ignored -> taught(house, model -> Lessons.halfWay(model, folder)), 14);
    fits(house, ignored -> taught(house, model -> Lessons.certain(model, folder)), 18);
  }

  private static Room taught(House house, Consumer<StartModel> moment) {
    StartModel model = startModel(house);
    Room room = StartRoom.of(model, house.appearance());
    moment.accept(model);
    return room;
  }

  @ParameterizedTest
  @EnumSource
  void boresGaugedOrNot(Language language) throws Exception {
    Language.speak(language);
    fits(House.empty(folder.resolve("none")), RoomLayoutTest::bores, 3);
    House house = House.gauged(folder, "bore-rocked", "gap-top");
    fits(house, RoomLayoutTest::bores, 15);
    house.appearance().unit().set(DisplayUnit.IN);
    fits(house, RoomLayoutTest::bores, 15);
  }

  @ParameterizedTest
  @EnumSource
  void gapsGaugedOrNot(Language language) throws Exception {
    Language.speak(language);
    fits(House.empty(folder.resolve("none")), RoomLayoutTest::gaps, 3);
    House house = House.gauged(folder, "bore-rocked", "gap-top", "gap-second");
    fits(house, RoomLayoutTest::gaps, 15);
    house.appearance().unit().set(DisplayUnit.IN);
    fits(house, RoomLayoutTest::gaps, 15);
  }

  @ParameterizedTest
  @EnumSource
  void gapsFiledAndSupposedOtherwise(Language language) throws Exception {
    Language.speak(language);
    House house = House.gauged(folder, "bore-rocked", "gap-top", "gap-second");
    fits(house, GapsStates::filedAndSupposed, 25);
    house.appearance().unit().set(DisplayUnit.IN);
    fits(house, GapsStates::filedAndSupposed, 25);
  }

  private static Room start(House house) {
    return StartRoom.of(startModel(house), house.appearance());
  }

  private static StartModel startModel(House house) {
    return new StartModel(
        new StationStart(new GaugingDesk(event -> {}, why -> {}), new TypedValues()),
        house.around(),
        new Memory(null),
        "bench",
        1);
  }

  private static Room bores(House house) {
    BoresModel model = new BoresModel(new Findings(house.around()), house.around());
    model.cylinder().set(2);
    return BoresRoom.of(model);
  }

  private static Room gaps(House house) {
    GapsModel model =
        new GapsModel(
            new Findings(house.around()), house.around(), new Memory(null), house::filing);
    model.cylinder().set(2);
    return GapsRoom.of(model);
  }

  private static void fits(House house, Function<House, Room> make, int fewestWords)
      throws Exception {
    for (double[] size : SIZES) {
      LayoutCheck found =
          WaitForAsyncUtils.asyncFx(
                  () -> {
                    StationScene scene =
                        RoomPictures.scene(house, make.apply(house), size[0], size[1]);
                    for (int pass = 0; pass < 4; pass++) {
                      scene.getRoot().applyCss();
                      scene.getRoot().layout();
                    }
                    LayoutCheck checked = LayoutCheck.closely(scene);
                    scene.setRoot(new Pane());
                    return checked;
                  })
              .get();
      String where = Language.spoken() + ", " + (int) size[0] + "x" + (int) size[1];
      assertEquals("", String.join("\n", found.faults()), where);
      assertTrue(found.words() >= fewestWords, where + ": words seen " + found.words());
    }
  }
}
