package boreledger.station.bench.view;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.ScriptedRun;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.Tones;
import boreledger.station.gauging.Ending;
import boreledger.station.ledger.LedgerFault;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Draws the bench in its states into PNG files, for people to look at. */
@EnabledIfSystemProperty(named = "bench.snapshots", matches = ".+")
class BenchSnapshots {
  private static final double[][] SIZES = {{1024, 700}, {1280, 800}, {1920, 1080}, {3840, 2160}};
  private static final double[] DEVIATIONS = {0.001, 0.0213, 0.0178, 0.014, 0.0112, 0.0047, 0.0029};
  private static final double[] GAPS = {0.481, 0.4402, 0.385};

  @TempDir Path folder;
  private final Path out = Path.of(System.getProperty("bench.snapshots"));
  private ScriptedRun run;
  private double nowS;

  private interface Script {
    void play() throws LedgerFault;
  }

  @Test
  void everyState() throws Exception {
    FxToolkit.registerPrimaryStage();
    for (Shot shot : shots()) {
      for (double[] size : SIZES) {
        Path ledger = Files.createTempDirectory(folder, shot.name());
        try (ScriptedRun scripted = new ScriptedRun(ledger)) {
          run = scripted;
          shoot(shot, size);
        }
      }
    }
  }

  private record Shot(String name, Script script, boolean bright) {}

  private Shot[] shots() {
    return new Shot[] {
      new Shot("idle", () -> {}, false),
      new Shot("opening", this::opening, false),
      new Shot("rocked", this::rocked, false),
      new Shot("rocked-bright", this::rocked, true),
      new Shot("refused", this::refused, false),
      new Shot("held", this::held, false),
      new Shot("held-bright", this::held, true),
      new Shot("caution", this::caution, false),
      new Shot("inches", this::inches, false),
      new Shot("large", this::large, false),
      new Shot("long", this::longOne, false),
      new Shot("gap", this::gap, false),
      new Shot("ring-depth", this::ringDepth, false),
      new Shot("end", this::end, false),
      new Shot("end-bright", this::end, true),
      new Shot("end-gap", this::endGap, false),
      new Shot("broke", this::broke, false),
    };
  }

  private void opening() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.rock(0.0008, 140);
  }

  private void rocked() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(9, DEVIATIONS);
    run.notPicked("1 rock seen, 3 needed");
    run.offerUntil(10, DEVIATIONS);
    run.rock(0.0123, 230);
  }

  private void refused() throws LedgerFault {
    rocked();
    run.notPicked("1 rock seen, 3 needed");
  }

  private void held() throws LedgerFault {
    rocked();
    run.live(1.51);
    run.offer(1.51);
  }

  private void caution() throws LedgerFault {
    rocked();
    run.offer(0.0123, "the key may be stuck, 5 equal values in a row", "the rocks were uneven");
    nowS += 14;
  }

  private void inches() throws LedgerFault {
    run.beginBores(Jobs.inches(), Gauges.rocked());
    run.offerUntil(10, DEVIATIONS);
    run.rock(-0.0123, 230);
  }

  private void large() throws LedgerFault {
    run.beginBores(Jobs.millHouse(), Gauges.settled());
    run.offerUntil(60, 96.002, 96.0213, 96.0178, 96.014);
    run.live(96.0192);
  }

  private void longOne() throws LedgerFault {
    run.beginBores(Jobs.longMill(), Gauges.rocked());
    run.offerUntil(60, DEVIATIONS);
    run.rock(0.0123, 230);
  }

  private void gap() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(20, DEVIATIONS);
    run.over(Ending.PLAN_DONE);
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offerUntil(4, GAPS);
    run.live(0.4402);
    nowS += 7;
  }

  private void ringDepth() throws LedgerFault {
    run.beginRingDepths(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offerUntil(18, 12.01, 12.34, 12.71, 12.42, 60.2, 60.4, 60.6, 60.5);
  }

  private void end() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    double[] wear = {
      0.001, 0.0213, 0.0178, 0.014, 0.0112, 0.0047, 0.0029, 0.0213, 0.0178, 0.014, 0.0112, 0.0047,
      0.0029, 0.1713, 0.1518, 0.09, 0.0812, 0.0547, 0.0429, 0.001
    };
    run.offerUntil(20, wear);
    run.over(Ending.PLAN_DONE);
  }

  private void endGap() throws LedgerFault {
    gap();
    run.offerUntil(9, GAPS);
    run.over(Ending.PLAN_DONE);
  }

  private void broke() throws LedgerFault {
    rocked();
    run.over(Ending.LINE_BROKE);
  }

  private void shoot(Shot shot, double[] size) throws Exception {
    WritableImage image = WaitForAsyncUtils.asyncFx(() -> draw(shot, size[0], size[1])).get();
    save(image, shot.name() + "-" + (int) size[0] + "x" + (int) size[1] + ".png");
  }

  private WritableImage draw(Shot shot, double width, double height) throws LedgerFault {
    nowS = 0;
    BenchServices services = new BenchServices(run, run, Tones.SILENT);
    BenchModel model = new BenchModel(services, Runnable::run, Runnable::run, () -> nowS);
    run.watch(model::accept);
    BenchScene scene = new BenchScene(model, width, height);
    scene.brightProperty().set(shot.bright());
    shot.script().play();
    model.tick();
    Scenes.layOut(scene);
    return scene.snapshot(null);
  }

  private void save(WritableImage image, String name) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    PixelReader pixels = image.getPixelReader();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        copy.setRGB(x, y, pixels.getArgb(x, y));
      }
    }
    try {
      ImageIO.write(copy, "png", out.resolve(name).toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
