package boreledger.station.bench;

import boreledger.station.bench.look.Light;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.window.StationScene;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** A room drawn into PNG files, for people to look at. Used on the screen's thread. */
public final class RoomPictures {
  private static final double[][] SIZES = {{1024, 700}, {1280, 800}, {1920, 1080}, {3840, 2160}};
  private static final int NORMAL = 1;

  private RoomPictures() {}

  /** Draws a room at every size in the dark light, and at one size in the others. */
  public static void draw(House house, Room room, Path folder, String name) throws IOException {
    Files.createDirectories(folder);
    for (double[] size : SIZES) {
      shoot(house, room, size, Light.DARK, folder, name);
    }
    shoot(house, room, SIZES[NORMAL], Light.BRIGHT, folder, name);
    shoot(house, room, SIZES[NORMAL], Light.SUN, folder, name);
  }

  /** The scene of a window that shows one room. */
  public static StationScene scene(House house, Room room, double width, double height) {
    BenchModel model =
        new BenchModel(
            new BenchServices(Optional::empty, null, Tones.SILENT, Voice.SILENT),
            Runnable::run,
            Runnable::run,
            () -> 0);
    return new StationScene(model, List.of(room), house.appearance(), width, height);
  }

  private static void shoot(
      House house, Room room, double[] size, Light light, Path folder, String name)
      throws IOException {
    house.appearance().light().set(light);
    StationScene scene = scene(house, room, size[0], size[1]);
    styleAnew(scene);
    for (int pass = 0; pass < 4; pass++) {
      scene.getRoot().applyCss();
      scene.getRoot().layout();
    }
    WritableImage image = scene.snapshot(null);
    String file =
        String.format(
            "%s-%s-%dx%d.png",
            name, light.name().toLowerCase(java.util.Locale.ROOT), (int) size[0], (int) size[1]);
    save(image, folder.resolve(file));
    // A node stands in one scene at a time.
    scene.setRoot(new javafx.scene.layout.Pane());
  }

  /**
   * A node that comes from another scene keeps the font sizes in em that it had there until the
   * root's style changes, which it does whenever a window is resized.
   */
  private static void styleAnew(StationScene scene) {
    String style = scene.getRoot().getStyle();
    scene.getRoot().setStyle("");
    scene.getRoot().applyCss();
    scene.getRoot().setStyle(style);
  }

  /** Writes an image as PNG. */
  public static void save(WritableImage image, Path file) throws IOException {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    PixelReader pixels = image.getPixelReader();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        copy.setRGB(x, y, pixels.getArgb(x, y));
      }
    }
    ImageIO.write(copy, "png", file.toFile());
  }
}
