package boreledger.station.bench.jobform;

import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Draws the form into PNG files, for people to look at: {@code mvn test -Dtest=JobFormSnapshots
 * -Dbench.snapshots=FOLDER}.
 */
@EnabledIfSystemProperty(named = "bench.snapshots", matches = ".+")
class JobFormSnapshots {
  private static final double[][] SIZES = {{1280, 800}, {1920, 1080}};
  private final Path out = Path.of(System.getProperty("bench.snapshots"));

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @Test
  void theFormInTwoLights() throws Exception {
    Files.createDirectories(out);
    for (Light light : new Light[] {Light.DARK, Light.BRIGHT}) {
      for (double[] size : SIZES) {
        for (double scroll : new double[] {0, 0.3, 0.62, 1}) {
          shoot(light, size, scroll, Forms.SAMPLE, "sample", false);
        }
        shoot(light, size, 0, null, "new", false);
        shoot(light, size, 0, Forms.SAMPLE, "wrong", true);
      }
    }
  }

  private void shoot(
      Light light, double[] size, double scroll, Path file, String name, boolean isWrong)
      throws Exception {
    WritableImage image =
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Appearance appearance = new Appearance();
                  JobForm form = Forms.form(file, appearance, saved -> {}, () -> {});
                  Scene scene = Forms.scene(form, appearance, size, light);
                  layOut(scene);
                  if (isWrong) {
                    ((TextField) scene.lookup("#nominal-bore")).setText("3.78 in");
                    ((TextField) scene.lookup("#taper-max")).setText("97");
                    ((TextField) scene.lookup("#stroke")).setText("a lot");
                  }
                  layOut(scene);
                  ((ScrollPane) scene.lookup("#form-page")).setVvalue(scroll);
                  layOut(scene);
                  return scene.snapshot(null);
                })
            .get();
    String place = (int) size[0] + "-" + light.name().toLowerCase(java.util.Locale.ROOT);
    String picture = name + "-" + (int) (scroll * 100) + "-" + place + ".png";
    RoomPictures.save(image, out.resolve(picture));
  }

  static void layOut(Scene scene) {
    for (int pass = 0; pass < 4; pass++) {
      scene.getRoot().applyCss();
      scene.getRoot().layout();
    }
  }
}
