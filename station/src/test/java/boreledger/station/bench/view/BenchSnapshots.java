package boreledger.station.bench.view;

import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.window.StationScene;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Draws the bench in its states into PNG files, for people to look at: {@code mvn test
 * -Dtest=BenchSnapshots -Dbench.snapshots=FOLDER}.
 */
@EnabledIfSystemProperty(named = "bench.snapshots", matches = ".+")
class BenchSnapshots {
  @TempDir Path folder;
  private final Path out = Path.of(System.getProperty("bench.snapshots"));

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @Test
  void everyStateAtEverySizeInBothLights() throws Exception {
    Files.createDirectories(out);
    List<String> names = new ArrayList<>();
    try (BenchStates all = new BenchStates(Files.createTempDirectory(folder, "names"))) {
      all.names().forEach(names::add);
    }
    for (String name : names) {
      try (BenchStates states = new BenchStates(Files.createTempDirectory(folder, name))) {
        states.play(name);
        for (double[] size : Scenes.SIZES) {
          shoot(states, name, size, Light.DARK, false);
        }
        shoot(states, name + "-bright", Scenes.SIZES[2], Light.BRIGHT, false);
        shoot(states, name + "-keys", Scenes.SIZES[1], Light.DARK, true);
      }
    }
  }

  private void shoot(BenchStates states, String name, double[] size, Light light, boolean keys)
      throws Exception {
    WritableImage image =
        WaitForAsyncUtils.asyncFx(
                () -> {
                  StationScene scene = Scenes.bench(states.model(), size, light);
                  if (keys) {
                    Scenes.chooseKeys(scene);
                  }
                  Scenes.layOut(scene);
                  return scene.snapshot(null);
                })
            .get();
    String file = name + "-" + (int) size[0] + "x" + (int) size[1] + ".png";
    RoomPictures.save(image, out.resolve(file));
  }
}
